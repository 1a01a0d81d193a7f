//! What is set, what is answered, and what grades an answer. The ids of
//! question families and blueprints are texts here: what they mean, the
//! graders know.

use clinic::mixing::{Action, Replay, Room};
use clinic::standing::Standing;
use std::rc::Rc;

/// What is to be done once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Task {
    /// A case.
    Case(Order),
    /// A tray to be read.
    Reading,
    /// A material to be mixed by hand.
    Mix {
        /// The id of the material.
        material: String,
        /// The key of what it is mixed for; its usual use where none is named.
        usage: Option<String>,
    },
    /// A question of the family of this id.
    Question(String),
    /// A number to be worked out, of the family of this id.
    Number(String),
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

/// By what a task is drawn for a seat. The same draw gives the same task for ever.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Draw {
    /// The seed of the place.
    pub seed: u64,
    /// The seed that all times of a task that is set several times share, so
    /// that a seat is never drawn the same question twice among them.
    pub of_set: u64,
    /// Which of those times this is, from 0.
    pub nth: u16,
    /// Whether every seat draws the same, so that what was asked is one item
    /// with one list of options.
    pub alike: bool,
}

impl Draw {
    /// Of a task that is set once, for a seat of its own.
    pub fn once(seed: u64) -> Self {
        Self {
            seed,
            of_set: seed,
            nth: 0,
            alike: false,
        }
    }
}

/// A mix as it was made: what the hand did, from which everything follows.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Made {
    /// The version of the model that it was made with.
    pub version: u16,
    /// The room.
    pub room: Room,
    /// What was done, in order.
    pub actions: Vec<Action>,
}

impl Made {
    /// What of a replay is not known from the task.
    pub fn of(replay: Replay) -> Self {
        Self {
            version: replay.version,
            room: replay.room,
            actions: replay.actions,
        }
    }

    /// The replay of a material and a use.
    pub fn replay(&self, material: &str, usage: &str) -> Replay {
        Replay {
            version: self.version,
            material: material.into(),
            usage: usage.into(),
            room: self.room,
            actions: self.actions.clone(),
        }
    }
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
    /// What was typed, as it was typed.
    Typed(String),
    /// A mix that was handed over.
    Mixed(Made),
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

/// How an item is answered, for those who write it down in other forms.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Way {
    /// By taking options, which are the same for all seats that were asked.
    #[default]
    Options,
    /// By a number.
    Number,
    /// By typing.
    Typed,
    /// In a way that is only told by what came of it: the options are kinds of outcome.
    Outcome,
}

/// An option that was offered, or a kind of outcome.
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

impl Offered {
    /// A kind of outcome, where nothing was offered to choose from.
    pub(crate) fn outcome(id: &str, label: &str, standing: Standing, because: &str) -> Self {
        Self {
            id: id.into(),
            label: label.into(),
            standing,
            left_out: Standing::Right,
            because: because.into(),
        }
    }
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
    /// How it is answered.
    pub way: Way,
    /// What the places in an answer by options say.
    pub places: Places,
    /// The options in the order in which they were offered, or the kinds of
    /// outcome that there can be.
    pub offered: Vec<Offered>,
}

/// What the places in an answer by options say.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Places {
    /// Which options were taken.
    #[default]
    Chosen,
    /// In which order they were put.
    Ordered,
    /// What was matched to each thing on the left, from the first to the last.
    Paired {
        /// How many things stand on the right; a place beyond them says that
        /// nothing was matched.
        right: usize,
    },
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
    /// What of the offered was taken, by its places, in the order in which it was
    /// taken. A class gives the same answers again and again: they share it.
    pub taken: Rc<[u16]>,
    /// The answer in words, where it is no choice among the offered.
    pub said: Option<Rc<str>>,
}

/// Works out what responses are worth.
pub trait Grader {
    /// How many parts a task has for a draw; none where this grader does not
    /// know such a task.
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16>;

    /// How many seconds a task takes an unhurried student, as far as is known
    /// beforehand: an estimate. None where this grader does not know such a task.
    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32>;

    /// Grades a response. None where there is no such part, or the response
    /// cannot have been given to it.
    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded>;
}
