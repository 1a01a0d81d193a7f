//! Hand-ins graded again, as a table: a row a hand-in, a column an item.

use super::HandIn;
use crate::assignment::{Assignment, Seat, Slot};
use crate::task::{Answer, Graded, Grader, Item, Offered, Places, Response, TaskId, Way};
use clinic::standing::Standing;
use std::borrow::Cow;
use std::collections::HashMap;
use std::rc::Rc;

/// How a response counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// Answered, with this verdict.
    Judged(Standing),
    /// Not answered; it counts as wrong, and is shown as blank.
    Blank,
}

impl Mark {
    /// Whether it counts as right: acceptable ways are taught too.
    pub fn right(self) -> bool {
        matches!(self, Self::Judged(Standing::Right | Standing::Acceptable))
    }

    /// Whether somebody could be hurt.
    pub fn harmful(self) -> bool {
        self == Self::Judged(Standing::Unsafe)
    }
}

/// The options that were taken, by their places in the column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Taken {
    /// None.
    None,
    /// One, which takes no room of its own.
    One(u16),
    /// Several.
    Several(Box<[u16]>),
}

impl Taken {
    /// Of places, of which there are so many at the most.
    fn of(mut places: impl Iterator<Item = u16>, most: usize) -> Self {
        let Some(first) = places.next() else {
            return Self::None;
        };
        let Some(second) = places.next() else {
            return Self::One(first);
        };
        let mut all = Vec::with_capacity(most);
        all.extend([first, second]);
        all.extend(places);
        Self::Several(all.into())
    }

    /// The places.
    pub fn places(&self) -> &[u16] {
        match self {
            Self::None => &[],
            Self::One(place) => core::slice::from_ref(place),
            Self::Several(places) => places,
        }
    }
}

/// One graded response.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cell {
    /// The column.
    pub column: u32,
    /// How it counts.
    pub mark: Mark,
    /// Marks out of 100.
    pub per_cent: u8,
    /// The options that were taken.
    pub taken: Taken,
    /// The options that were treated wrongly: taken though that is wrong or
    /// worse, or left out though that is.
    pub wrongly: Taken,
    /// The seconds that it took.
    pub seconds: u32,
    /// The answer in words, where it is no choice among the options.
    pub said: Option<Rc<str>>,
}

/// One graded hand-in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The seat.
    pub seat: Seat,
    /// Which try it is, from 1.
    pub attempt: u8,
    /// When it was finished, in minutes from 1 January 1970 on the student's clock.
    pub finished: u32,
    /// The seconds that it took.
    pub seconds: u64,
    /// Whether it was finished after the day on which it was due.
    pub late: bool,
    /// The responses.
    pub cells: Vec<Cell>,
}

/// An option of a column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// Its id.
    pub id: Rc<str>,
    /// What it says.
    pub label: Rc<str>,
    /// Whether taking it is right or acceptable for some seat.
    pub fits: bool,
    /// Whether taking it is wrong or worse for some seat.
    pub fails: bool,
    /// Why, for the first seat for which it is wrong if there is one, else for
    /// the first seat.
    pub because: Rc<str>,
}

/// A column: an item at a place of the assignment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    /// The place of the task in the assignment.
    pub place: u16,
    /// The id of the item.
    pub id: Rc<str>,
    /// Its name.
    pub name: Rc<str>,
    /// The id of its competency.
    pub competency: Rc<str>,
    /// Whether one option is the whole answer.
    pub one: bool,
    /// How it is answered.
    pub way: Way,
    /// What the places in an answer by options say.
    pub places: Places,
    /// The options that were offered to anybody, in the order in which they were first seen.
    pub options: Vec<Choice>,
}

/// Hand-ins as a table.
#[derive(Debug, Default)]
pub struct Table {
    /// The columns, in the order in which they were first seen.
    pub columns: Vec<Column>,
    /// The rows, in the order in which they were read.
    pub rows: Vec<Row>,
    found: HashMap<(u16, Rc<str>), u32>,
    /// Where the options of the item seen last stand in its column.
    placed: Vec<Option<Placed>>,
}

/// An item, and the places of its options in its column.
type Placed = (Rc<Item>, Rc<[u16]>);

impl Table {
    /// Grades a hand-in again and adds it. None, and nothing added, where its
    /// responses do not fit what was set.
    pub fn add(
        &mut self,
        assignment: &Assignment,
        slots: &[Slot],
        hand_in: &HandIn,
        grader: &(impl Grader + ?Sized),
    ) -> Option<()> {
        let graded = graded(assignment, slots, hand_in, grader)?;
        let mut row = Row {
            seat: hand_in.seat,
            attempt: hand_in.attempt,
            finished: hand_in.finished,
            seconds: 0,
            late: assignment
                .due
                .is_some_and(|day| hand_in.finished / (24 * 60) > u32::from(day.0)),
            cells: Vec::with_capacity(graded.len()),
        };
        for (place, graded, response) in graded {
            row.seconds += u64::from(response.seconds);
            let cell = self.cell(row.cells.len(), place, &graded, &response)?;
            row.cells.push(cell);
        }
        self.rows.push(row);
        Some(())
    }

    /// Puts the row added last in the place of an earlier one.
    pub(super) fn replace(&mut self, earlier: usize) {
        if earlier < self.rows.len() {
            self.rows.swap_remove(earlier);
        }
    }

    fn cell(
        &mut self,
        guess: usize,
        place: u16,
        graded: &Graded,
        response: &Response,
    ) -> Option<Cell> {
        let number = self.column(guess, place, &graded.item)?;
        let at = usize::try_from(number).ok()?;
        let places = self.places(at, &graded.item)?;
        let blank = response.answer == Answer::Blank;
        let taken = &graded.taken[..];
        let placed = |number: u16| places.get(usize::from(number)).copied();
        let wrongly = match (blank, graded.item.one) {
            (true, _) => Taken::None,
            (false, true) => Taken::of(slips(&graded.item, taken).filter_map(placed), taken.len()),
            (false, false) => Taken::of(
                wrongly(&graded.item, taken).filter_map(placed),
                places.len(),
            ),
        };
        Some(Cell {
            column: number,
            mark: if blank {
                Mark::Blank
            } else {
                Mark::Judged(graded.standing)
            },
            per_cent: graded.per_cent,
            taken: Taken::of(taken.iter().copied().filter_map(placed), taken.len()),
            wrongly,
            seconds: response.seconds,
            said: graded.said.clone(),
        })
    }

    /// The number of an item's column. Most rows hold the same items in the
    /// same order, so the one with the cell's own number is looked at first.
    fn column(&mut self, guess: usize, place: u16, item: &Rc<Item>) -> Option<u32> {
        let own = |column: &Column| column.place == place && column.id == item.id;
        if self.columns.get(guess).is_some_and(own) {
            return u32::try_from(guess).ok();
        }
        if let Some(&number) = self.found.get(&(place, item.id.clone())) {
            return Some(number);
        }
        let number = u32::try_from(self.columns.len()).ok()?;
        self.columns.push(Column {
            place,
            id: item.id.clone(),
            name: item.name.clone(),
            competency: item.competency.clone(),
            one: item.one,
            way: item.way,
            places: item.places,
            options: Vec::new(),
        });
        self.placed.push(None);
        self.found.insert((place, item.id.clone()), number);
        Some(number)
    }

    /// The places of an item's options in its column.
    fn places(&mut self, at: usize, item: &Rc<Item>) -> Option<Rc<[u16]>> {
        let placed = self.placed.get_mut(at)?;
        if let Some((last, places)) = placed
            && Rc::ptr_eq(last, item)
        {
            return Some(places.clone());
        }
        let column = self.columns.get_mut(at)?;
        let places: Option<Rc<[u16]>> = item.offered.iter().map(|o| column.place_of(o)).collect();
        *placed = Some((item.clone(), places.clone()?));
        places
    }
}

impl Column {
    fn place_of(&mut self, offered: &Offered) -> Option<u16> {
        let fits = offered.standing <= Standing::Acceptable;
        let place = self.options.iter().position(|o| o.id == offered.id);
        let place = place.unwrap_or_else(|| {
            self.options.push(Choice {
                id: offered.id.clone(),
                label: offered.label.clone(),
                fits: false,
                fails: false,
                because: offered.because.clone(),
            });
            self.options.len() - 1
        });
        let option = self.options.get_mut(place)?;
        if !fits && !option.fails {
            option.because = offered.because.clone();
        }
        option.fits |= fits;
        option.fails |= !fits;
        u16::try_from(place).ok()
    }
}

/// The options that were taken though that is wrong or worse. Where one option is
/// the whole answer, leaving the others out is no fault.
fn slips(item: &Item, taken: &[u16]) -> impl Iterator<Item = u16> {
    let is_wrong = |number: &u16| {
        let offered = item.offered.get(usize::from(*number));
        offered.is_some_and(|it| it.standing >= Standing::Wrong)
    };
    taken.iter().copied().filter(is_wrong)
}

/// The options that were taken or left out though that is wrong or worse, in the
/// order in which they were offered.
fn wrongly(item: &Item, taken: &[u16]) -> impl Iterator<Item = u16> {
    let all = item.offered.iter().zip(0..);
    let wrong = all.filter(|(offered, number)| {
        let standing = if taken.contains(number) {
            offered.standing
        } else {
            offered.left_out
        };
        standing >= Standing::Wrong
    });
    wrong.map(|(_, number)| number)
}

type Judged<'h> = (u16, Graded, Cow<'h, Response>);

/// Every part of every task, with its response; a part without one is blank.
fn graded<'h>(
    assignment: &Assignment,
    slots: &[Slot],
    hand_in: &'h HandIn,
    grader: &(impl Grader + ?Sized),
) -> Option<Vec<Judged<'h>>> {
    if hand_in.responses.len() > slots.len() {
        return None;
    }
    let mut all = Vec::with_capacity(hand_in.responses.iter().map(Vec::len).sum());
    for slot in slots {
        let draw = assignment.draw(hand_in.seat, slot);
        let given = hand_in.responses.get(usize::from(slot.place));
        let given = given.map_or(&[][..], |responses| responses);
        let parts = grader.parts(&slot.task, draw)?;
        if given.len() > usize::from(parts) {
            return None;
        }
        for part in 0..parts {
            let response = given.get(usize::from(part));
            let response = response.map_or_else(Cow::default, Cow::Borrowed);
            let task = TaskId {
                task: slot.task.clone(),
                part,
            };
            let graded = grader.grade(&task, draw, &response)?;
            all.push((slot.place, graded, response));
        }
    }
    Some(all)
}
