//! The licences of all packages in the page, as the build wrote them.

/// Between the list of packages and each text, as `scripts/builder` writes it.
const TEXT: char = '\u{1e}';

/// A package, and the numbers of its texts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Licensed {
    pub name: &'static str,
    pub version: &'static str,
    pub licence: &'static str,
    pub texts: Vec<&'static str>,
}

/// What the build wrote of all packages. It stays for good, as it is read once.
pub fn licences(file: String) -> Vec<Licensed> {
    let file: &'static str = Box::leak(file.into_boxed_str());
    let mut parts = file.split(TEXT);
    let lines = parts.next().unwrap_or_default().lines();
    let texts: Vec<&'static str> = parts.collect();
    lines
        .filter_map(|line| {
            let mut fields = line.split('\t');
            let (name, version, licence) = (fields.next()?, fields.next()?, fields.next()?);
            let numbers = fields.next()?.split(' ').filter_map(|number| number.parse().ok());
            let texts = numbers.filter_map(|number: usize| texts.get(number).copied()).collect();
            Some(Licensed { name, version, licence, texts })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_build_wrote_is_read() {
        let all =
            licences("a\t1.0\tMIT\t1 0\nb\t2.0\tZlib\t\n\u{1e}first\n\u{1e}second".to_owned());
        assert_eq!(all.len(), 2);
        assert_eq!((all[0].name, all[0].version, all[0].licence), ("a", "1.0", "MIT"));
        assert_eq!(all[0].texts, ["second", "first\n"]);
        assert!(all[1].texts.is_empty());
        assert!(licences("<!doctype html>".to_owned()).is_empty());
    }
}
