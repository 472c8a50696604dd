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
    /// A line for the heads and one for each string, cells between bars; an empty line ends it.
    pub fn written(&self) -> String {
        let mut out: String =
            self.heads.iter().map(|[word, unit]| format!("{word} {unit}|")).collect();
        out.push('\n');
        for (octave, cells) in &self.rows {
            let cells = cells.iter().map(|[text, why]| match why.as_str() {
                "" => format!("{text}|"),
                why => format!("{text} ({why})|"),
            });
            out.push_str(&format!("{octave}|{}\n", cells.collect::<String>()));
        }
        out.push('\n');
        out
    }
}
