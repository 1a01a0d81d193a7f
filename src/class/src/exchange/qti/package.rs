//! Items in a package with its manifest.

use super::super::zip::{self, File, ZipError};
use super::item::{Question, identifier};
use core::fmt::Write;

/// A package of questions.
///
/// # Errors
/// [`ZipError`] where two questions have the same id, or there are too many.
pub fn package(id: &str, questions: &[Question]) -> Result<Vec<u8>, ZipError> {
    let mut resources = String::new();
    let mut files = Vec::new();
    for question in questions {
        let id = identifier(&question.id);
        let path = format!("items/{id}.xml");
        // Writing to a String cannot fail.
        let _ = writeln!(
            resources,
            "    <resource identifier=\"{id}\" type=\"imsqti_item_xmlv2p2\" href=\"{path}\">\n      <file href=\"{path}\"/>\n    </resource>"
        );
        files.push(File::text(&path, question.xml()));
    }
    let manifest = format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<manifest xmlns="http://www.imsglobal.org/xsd/imscp_v1p1" identifier="{}">
  <metadata>
    <schema>QTIv2.2 Package</schema>
    <schemaversion>1.0.0</schemaversion>
  </metadata>
  <organizations/>
  <resources>
{resources}  </resources>
</manifest>
"#,
        identifier(id)
    );
    files.insert(0, File::text("imsmanifest.xml", manifest));
    zip::write(&files)
}
