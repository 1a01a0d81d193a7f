//! What is set, what is answered, and what grades an answer. The ids of
//! question families and blueprints are texts here: what they mean, the
//! grader knows.

use clinic::standing::Standing;
use std::rc::Rc;

/// What is to be done once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Task {
    /// A case.
    Case(Order),
    /// A tray to be read.
    Reading,
    /// A hand-mixed material, of this id.
    Mix(String),
    /// A question of the family of this id.
    Question(String),
    /// A practice form.
    Form {
        /// The id of the blueprint that its questions are spread over.
        blueprint: String,
        /// How many questions it has.
        questions: u16,
    },
}

/// What a case has to be. What is left open can be anything.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Order {
    /// The id of its frame.
    pub frame: Option<String>,
    /// The id of the procedure that the visit is booked for.
    pub booked: Option<String>,
    /// The id of the competency that it mainly shows.
    pub competency: Option<String>,
    /// How hard it is.
    pub level: Option<catalogue::cases::Level>,
    /// The id of a flag, such as an allergy, that the patient has to have.
    pub with: Option<String>,
}

/// One thing that is answered and graded: a decision of a case, a question of a form.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TaskId {
    /// The task it belongs to.
    pub task: Rc<Task>,
    /// Its place among the parts of the task, from 0.
    pub part: u16,
}

/// What was answered.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub enum Answer {
    /// Nothing: it was left open.
    #[default]
    Blank,
    /// Options, which can be none where that is an answer, by their places in the order in which they were offered, in
    /// the order in which they were taken.
    Options(Vec<u16>),
    /// A number, in thousandths.
    Number(i64),
}

/// One response.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Response {
    /// What was answered.
    pub answer: Answer,
    /// Seconds from seeing it to answering it.
    pub seconds: u32,
    /// Whether a hint was looked at first.
    pub hinted: bool,
}

/// An option that was offered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offered {
    /// Its id, the same for every seat.
    pub id: Rc<str>,
    /// What it says.
    pub label: Rc<str>,
    /// How good it is to take it.
    pub standing: Standing,
    /// How bad it is to leave it out, where several are to be taken.
    pub left_out: Standing,
    /// Why, in a sentence or more.
    pub because: Rc<str>,
}

/// The thing that was graded, as far as it is the same for every seat.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Item {
    /// Its id: a decision of a case, or a question. Items of different seats
    /// with the same id at the same place of the assignment are reported as one.
    pub id: Rc<str>,
    /// A short name.
    pub name: Rc<str>,
    /// The id of the competency it shows.
    pub competency: Rc<str>,
    /// Whether one option is the whole answer, so that the options compete.
    pub one: bool,
    /// The options in the order in which they were offered; none for a number.
    pub offered: Vec<Offered>,
}

/// How a response was graded.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Graded {
    /// What was graded.
    pub item: Rc<Item>,
    /// The verdict; a blank is wrong.
    pub standing: Standing,
    /// Marks out of 100.
    pub per_cent: u8,
}

/// Works out what responses are worth.
pub trait Grader {
    /// How many parts a task has for a seed; none where this grader does not
    /// know such a task.
    fn parts(&self, task: &Rc<Task>, seed: u64) -> Option<u16>;

    /// Grades a response. None where there is no such part, or the response
    /// cannot have been given to it.
    fn grade(&self, task: &TaskId, seed: u64, response: &Response) -> Option<Graded>;
}

/// Several graders as one: each task goes to the first that knows it.
impl Grader for [&dyn Grader] {
    fn parts(&self, task: &Rc<Task>, seed: u64) -> Option<u16> {
        self.iter().find_map(|grader| grader.parts(task, seed))
    }

    fn grade(&self, task: &TaskId, seed: u64, response: &Response) -> Option<Graded> {
        self.iter()
            .find_map(|grader| grader.grade(task, seed, response))
    }
}
