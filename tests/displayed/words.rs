//! Every word that the chart shows of the samples: kept as text, so that the page in the browser and
//! the program on this machine are held to the same figures.

/// The words of each sample as they are kept.
pub const KEPT: [(&str, &str); 4] = [
    ("wire-22", include_str!("wire-22.txt")),
    ("travel-26", include_str!("travel-26.txt")),
    ("floor-36", include_str!("floor-36.txt")),
    ("pedal-47", include_str!("pedal-47.txt")),
];

/// What a chart shows, whether it stands on a page or not.
#[derive(Default)]
pub struct Chart {
    /// The heads of the columns: word and unit.
    pub heads: Vec<[String; 2]>,
    /// For each string its octave and its cells: what stands there and, if that is no figure, why.
    pub rows: Vec<(String, Vec<[String; 2]>)>,
}

impl Chart {
    /// A line for the heads and one for each string, cells between bars, with a letter where there is no
    /// figure; then the reason that each letter stands for. An empty line ends it.
    pub fn written(&self) -> String {
        let mut out = String::from("Octave|");
        out.extend(self.heads.iter().map(|[word, unit]| format!("{word} {unit}|")));
        out.push('\n');
        let mut reasons: Vec<&str> = Vec::new();
        for (octave, cells) in &self.rows {
            out.push_str(&format!("{octave}|"));
            for [text, why] in cells {
                out.push_str(text);
                if !why.is_empty() {
                    let known = reasons.iter().position(|reason| reason == why);
                    out.push_str(&format!(" {}", letter(known.unwrap_or(reasons.len()))));
                    if known.is_none() {
                        reasons.push(why);
                    }
                }
                out.push('|');
            }
            out.push('\n');
        }
        for (place, why) in reasons.iter().enumerate() {
            out.push_str(&format!("{}: {why}\n", letter(place)));
        }
        out.push('\n');
        out
    }
}

/// `a`, `b` and so on.
fn letter(place: usize) -> char {
    ('a'..='z').nth(place).expect("fewer reasons than letters")
}

/// Where two such texts differ: each cell by its row and column, a line that is no row as a
/// whole. Empty where they are the same.
pub fn differences(kept: &str, now: &str) -> String {
    let heads: Vec<&str> = now.lines().next().unwrap_or_default().split('|').collect();
    let count = kept.lines().count().max(now.lines().count());
    let mut out = String::new();
    for number in 0..count {
        let [was, is] = [kept, now].map(|text| text.lines().nth(number).unwrap_or("no such line"));
        let [before, after] = [was, is].map(|line| line.split('|').collect::<Vec<&str>>());
        if before.len() != after.len() || before.len() < 2 {
            if was != is {
                out.push_str(&format!("line {}: kept \"{was}\", now \"{is}\"\n", number + 1));
            }
            continue;
        }
        for (place, (was, is)) in before.iter().zip(&after).enumerate() {
            if was != is {
                let column = heads.get(place).unwrap_or(&"").trim();
                let row = if number == 0 { "heads".to_owned() } else { format!("string {number}") };
                out.push_str(&format!("{row}, {column}: kept \"{was}\", now \"{is}\"\n"));
            }
        }
    }
    out
}
