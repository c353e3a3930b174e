//! One measured row.

use serde_json::{Value, json};

/// What a row is to reach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Goal {
    /// At most this many seconds; for rows without a rival.
    Seconds(f64),
    /// At least this many times as fast as the rival.
    TimesAsFast(f64),
}

/// One measured row: times in seconds.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// What was measured.
    pub what: String,
    /// Our time.
    pub ours: f64,
    /// The rival's time in the same run, where there is a rival.
    pub rival: Option<f64>,
    /// What is to be reached.
    pub goal: Goal,
}

impl Row {
    /// How many times as fast as the rival ours is.
    pub fn ratio(&self) -> Option<f64> {
        Some(self.rival? / self.ours)
    }

    /// Whether the goal is reached. A goal against a rival that is not there is not.
    pub fn reached(&self) -> bool {
        match self.goal {
            Goal::Seconds(most) => self.ours <= most,
            Goal::TimesAsFast(least) => self.ratio().is_some_and(|ratio| ratio >= least),
        }
    }

    /// `{"what","ours","rival","ratio","goal"}`: seconds, and the goal as the ratio that is
    /// to be reached, or as seconds where there is no rival.
    pub fn json(&self) -> String {
        let goal = match self.goal {
            Goal::Seconds(goal) | Goal::TimesAsFast(goal) => goal,
        };
        let number = |value: Option<f64>| value.map_or(Value::Null, Value::from);
        json!({
            "what": self.what,
            "ours": self.ours,
            "rival": number(self.rival),
            "ratio": number(self.ratio()),
            "goal": goal,
        })
        .to_string()
    }

    /// A line for people.
    pub fn line(&self) -> String {
        let verdict = if self.reached() { "" } else { "  MISSED" };
        let goal = match self.goal {
            Goal::Seconds(most) => format!("at most {}", time(most)),
            Goal::TimesAsFast(least) => format!("at least {least}x"),
        };
        let rival = self.rival.map_or_else(String::new, |rival| {
            let ratio = rival / self.ours;
            format!(", rival {}, {ratio:.1}x", time(rival))
        });
        let ours = time(self.ours);
        format!(
            "  {:<52} {ours:>9}{rival} (goal: {goal}){verdict}",
            self.what
        )
    }
}

/// A time in the unit that leaves one to three digits before the point.
fn time(seconds: f64) -> String {
    let (scale, unit) = match seconds {
        s if s >= 1.0 => (1.0, "s"),
        s if s >= 1e-3 => (1e3, "ms"),
        s if s >= 1e-6 => (1e6, "µs"),
        _ => (1e9, "ns"),
    };
    format!("{:.1} {unit}", seconds * scale)
}

#[cfg(test)]
mod tests {
    use super::{Goal, Row};

    fn row(rival: Option<f64>, goal: Goal) -> Row {
        Row {
            what: "curve".to_owned(),
            ours: 0.002,
            rival,
            goal,
        }
    }

    #[test]
    fn ratio_says_how_many_times_as_fast() {
        let row = row(Some(0.05), Goal::TimesAsFast(20.0));
        assert_eq!(row.ratio(), Some(25.0));
        assert!(row.reached());
        assert_eq!(
            row.json(),
            r#"{"what":"curve","ours":0.002,"rival":0.05,"ratio":25.0,"goal":20.0}"#
        );
        assert!(
            row.line()
                .contains("2.0 ms, rival 50.0 ms, 25.0x (goal: at least 20x)")
        );
    }

    #[test]
    fn without_a_rival_the_goal_is_a_time() {
        let slow = row(None, Goal::Seconds(0.001));
        assert!(!slow.reached() && slow.line().ends_with("MISSED"));
        assert_eq!(
            slow.json(),
            r#"{"what":"curve","ours":0.002,"rival":null,"ratio":null,"goal":0.001}"#
        );
        assert!(row(None, Goal::Seconds(0.002)).reached());
    }

    #[test]
    fn a_rival_that_is_not_there_is_not_beaten() {
        assert!(!row(None, Goal::TimesAsFast(1.0)).reached());
    }
}
