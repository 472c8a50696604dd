#[cfg(feature = "web")]
pub fn start() { leptos::mount::mount_to_body(|| leptos::view! { <p>"x"</p> }) }
