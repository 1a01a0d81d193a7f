//! Knowledge tracing (Corbett and Anderson 1995): a hint for repeated drills of
//! one step, never a headline, because its parameters cannot be told apart from
//! short runs and it knows no forgetting.

/// The parameters, all between 0 and 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnowledgeTracing {
    /// Known before the first answer.
    pub start: f64,
    /// Learnt by one answer.
    pub learn: f64,
    /// Right without knowing.
    pub guess: f64,
    /// Wrong in spite of knowing.
    pub slip: f64,
}

impl Default for KnowledgeTracing {
    /// Fixed, because a student gives too little to fit them.
    fn default() -> Self {
        Self {
            start: 0.3,
            learn: 0.12,
            guess: 0.25,
            slip: 0.08,
        }
    }
}

/// What is thought after an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Traced {
    /// Known when the answer was given.
    pub known: f64,
    /// Known after learning from it.
    pub after: f64,
    /// The chance that the next answer is right.
    pub next: f64,
}

impl KnowledgeTracing {
    /// What is thought after each answer, and the log-likelihood of all of them.
    pub fn trace(&self, answers: &[bool]) -> (Vec<Traced>, f64) {
        let mut prior = self.start;
        let mut likelihood = 0.0;
        let mut traced = Vec::with_capacity(answers.len());
        for &right in answers {
            let (knowing, guessing) = if right {
                (1.0 - self.slip, self.guess)
            } else {
                (self.slip, 1.0 - self.guess)
            };
            let chance = prior * knowing + (1.0 - prior) * guessing;
            likelihood += chance.ln();
            let known = prior * knowing / chance;
            let after = known + (1.0 - known) * self.learn;
            traced.push(Traced {
                known,
                after,
                next: after * (1.0 - self.slip) + (1.0 - after) * self.guess,
            });
            prior = after;
        }
        (traced, likelihood)
    }
}
