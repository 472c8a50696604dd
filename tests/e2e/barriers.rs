//! What axe-core finds in the page as it is.

use serde_json::Value;

use crate::browser::Browser;

/// Runs axe on the page and gives a few lines for each thing found.
const AXE_RUN: &str = include_str!("axe.js");

impl Browser {
    /// Fails if axe finds a barrier in the page as it is now.
    pub async fn check_barriers(&self) {
        self.bring_axe().await;
        let result = self.ask(AXE_RUN).await;
        let found: Vec<_> =
            result["found"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        assert!(found.is_empty(), "axe found:\n{}", found.join("\n"));
        assert!(result["passes"].as_u64() > Some(0), "axe looked at nothing");
    }

    /// Puts axe into the page, unless it is there.
    pub async fn bring_axe(&self) {
        if self.ask("return typeof axe").await == "undefined" {
            let path =
                std::env::var("AXE_JS").expect("AXE_JS, which scripts/test sets, names axe.min.js");
            let axe = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{path}: {e}"));
            self.ask(&axe).await;
        }
    }
}
