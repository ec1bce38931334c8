//! What stands in a file comes out of it: cells, dates and numbers, however they were written.

use chrono::{NaiveDate, NaiveTime};
use laydown_domain::visible::cleaned;
use proptest::prelude::*;

use super::cells::{self, DateError, DateOrder, TwoWays, decimal_mark, stamp};
use super::table::{Table, TableError};
use crate::Now;
use crate::backup::as_it_was;
use crate::in_words::Sentence;
use laydown_domain::units::{DecimalMark, Style, parse};

const NOW: Now = Now { unix_ms: 1_795_600_000_000, utc_offset_s: 3_600 };

fn at(text: &str, order: Option<DateOrder>) -> Option<i64> {
    stamp(text, order).ok()?.unix_ms(NOW)
}

fn moment(year: i32, month: u32, day: u32, hour: u32, minute: u32) -> Option<i64> {
    let local = NaiveDate::from_ymd_opt(year, month, day)?.and_hms_opt(hour, minute, 0)?;
    Some(local.and_utc().timestamp_millis() - i64::from(NOW.utc_offset_s) * 1_000)
}

fn lines(text: &str) -> Vec<u64> {
    Table::read(text.as_bytes()).unwrap().rows.iter().map(|row| row.line).collect()
}

#[test]
fn dates_as_people_write_them() {
    for text in ["2026-11-03", "2026/11/3", "2026.11.03", "20261103", "3.11.2026", "03.11.26", "3 Nov 2026", "3-Nov-26"]
    {
        assert_eq!(at(text, None), moment(2026, 11, 3, 12, 0), "{text}");
    }
    for text in ["Nov 3, 2026", "November 3rd 2026", "3rd november, 2026", "2026 Nov 3", "3/11/2026", "3-11-2026"] {
        assert_eq!(at(text, Some(DateOrder::DayFirst)), moment(2026, 11, 3, 12, 0), "{text}");
    }
    assert_eq!(at("11/3/2026", Some(DateOrder::MonthFirst)), moment(2026, 11, 3, 12, 0));
    assert_eq!(at("5/5/2026", None), moment(2026, 5, 5, 12, 0), "the same in either order");
    for text in
        ["2026-11-03T14:30", "2026-11-03 14:30:00", "3.11.2026 2:30 pm", "3 Nov 2026, 2:30PM", "2026-11-03T13:30:00Z"]
    {
        assert_eq!(at(text, None), moment(2026, 11, 3, 14, 30), "{text}");
    }
    assert_eq!(at("2026-11-03 14:30:00.500+02:00", None), moment(2026, 11, 3, 13, 30).map(|ms| ms + 500));
    assert_eq!(at("3 Nov 2026 12:10 am", None), moment(2026, 11, 3, 0, 10));
}

#[test]
fn what_is_no_date_or_two_is_not_guessed() {
    assert_eq!(stamp("3/11/2026", None), Err(DateError::TwoWays));
    assert_eq!(stamp("31/2/2026", Some(DateOrder::DayFirst)), Err(DateError::NoDate));
    assert_eq!(stamp("25/4/2026", Some(DateOrder::MonthFirst)), Err(DateError::NoDate));
    for text in [
        "",
        "Total",
        "12.5",
        "3/11",
        "2026",
        "3/11/026",
        "2026-13-01",
        "2026-11-03 25:00",
        "2026-11-03 14:30 13",
        "2026-11-03 13:00 pm",
        "à 3/11/2026",
        "::",
    ] {
        assert_eq!(stamp(text, Some(DateOrder::DayFirst)), Err(DateError::NoDate), "{text}");
    }
}

#[test]
fn a_mark_is_known_where_one_number_can_only_be_read_one_way() {
    let mark = |numbers: &[&str]| decimal_mark(numbers.iter().copied(), true);
    assert_eq!(mark(&["19", "", "20 g"]), Ok(None));
    assert_eq!(mark(&["19.4", "1,234"]), Ok(Some(DecimalMark::Point)));
    assert_eq!(mark(&["1,234", "0,125"]), Ok(Some(DecimalMark::Comma)));
    assert_eq!(mark(&["1,234", "20"]), Err(TwoWays));
    assert_eq!(mark(&["19.4", "19,4"]), Ok(None), "either mark is plain where no number needs it");
    assert_eq!(mark(&["19.4", "19,4", "1.234"]), Err(TwoWays));
    assert_eq!(decimal_mark(["1,450"].into_iter(), false), Ok(Some(DecimalMark::Comma)), "an SG is never a thousand");
}

#[test]
fn the_file_says_what_parts_its_cells() {
    for text in [
        "date;wet g\n2026-11-03;19,4\n",
        "date\twet g\n2026-11-03\t19,4\n",
        "sep=;\ndate;wet g\n2026-11-03;19,4\n",
        "sep=|\r\ndate|wet g\r\n2026-11-03|19,4\r\n",
        "date,wet g\r2026-11-03,\"19,4\"\r",
        "Glaze book, all of it;\n\ndate;wet g\n2026-11-03;19,4\n",
    ] {
        let table = Table::read(text.as_bytes()).unwrap();
        assert_eq!(table.headers, ["date", "wet g"], "{text:?}");
        assert_eq!((table.rows.len(), table.rows[0].cell(1)), (1, "19,4"), "{text:?}");
    }
}

#[test]
fn lines_are_counted_as_an_editor_counts_them() {
    assert_eq!(lines("date,note\n\n\n2026-11-03,a\n\"2026-11-04\",\"b\nc\"\n\r\n2026-11-05,d\n"), [4, 5, 8]);
    assert_eq!(lines("sep=,\ndate,note\n2026-11-03,a\n"), [3]);
    assert_eq!(lines("\u{feff}date,note\r\n2026-11-03,a\r\n,\r\n2026-11-04,b"), [2, 4]);
}

#[test]
fn an_inch_mark_is_no_open_quotation_mark() {
    let table = Table::read(b"date,note\n2026-11-03,6\" bowl\n2026-11-04,plain\n").unwrap();
    assert_eq!((table.rows[0].cell(1), table.rows.len()), ("6\" bowl", 2));
    let open = Table::read(b"date,note\n2026-11-03,\"6 bowl\n2026-11-04,plain\n").err();
    assert_eq!(open, Some(TableError::OpenQuote { line: 2 }));
}

proptest! {
    #[test]
    fn any_cells_come_back_as_they_were_written(
        rows in prop::collection::vec(prop::collection::vec("[a-zA-Zäß\"',;\t\n =+@-]{0,12}", 3), 1..20),
        separator in prop::sample::select(b",;\t".to_vec()),
        always_quoted in any::<bool>(),
    ) {
        let style = if always_quoted { csv::QuoteStyle::Always } else { csv::QuoteStyle::Necessary };
        let mut writer = csv::WriterBuilder::new().delimiter(separator).quote_style(style).from_writer(Vec::new());
        writer.write_record(["date", "form", "note"]).unwrap();
        // A first cell that is never empty, so that no line is.
        for row in &rows {
            writer.write_record(["x", &row[1], &row[2]]).unwrap();
        }
        let table = Table::read(&writer.into_inner().unwrap()).unwrap();
        prop_assert_eq!(table.rows.len(), rows.len());
        for (row, written) in table.rows.iter().zip(&rows) {
            for column in [1, 2] {
                prop_assert_eq!(row.cell(column), cleaned(as_it_was(written[column].trim())));
            }
        }
    }

    #[test]
    fn any_text_is_a_table_or_a_sentence(bytes in prop::collection::vec(any::<u8>(), 0..300), text in "[a1,;\t\"\r\n=']{0,200}") {
        for bytes in [&bytes[..], text.as_bytes()] {
            match Table::read(bytes) {
                Ok(table) => {
                    prop_assert!(!table.rows.is_empty());
                    prop_assert!(table.rows.windows(2).all(|pair| pair[0].line < pair[1].line));
                }
                Err(error) => prop_assert!(error.sentence().ends_with('.')),
            }
        }
    }

    #[test]
    fn any_moment_reads_back_in_every_notation(day in 0..20_000i64, minute in 0..1_440u32) {
        let date = NaiveDate::from_ymd_opt(1980, 1, 1).unwrap() + chrono::Duration::days(day);
        let local = date.and_time(NaiveTime::from_hms_opt(minute / 60, minute % 60, 0).unwrap());
        let expected = local.and_utc().timestamp_millis() - i64::from(NOW.utc_offset_s) * 1_000;
        for pattern in ["%Y-%m-%dT%H:%M:%S", "%Y-%m-%d %H:%M", "%d.%m.%Y %H:%M", "%d/%m/%Y %H:%M", "%-d %b %Y, %-I:%M %p", "%B %-d, %Y %H:%M"] {
            let written = local.format(pattern).to_string();
            prop_assert_eq!(at(&written, Some(DateOrder::DayFirst)), Some(expected), "{}", written);
        }
        let written = local.format("%m/%d/%Y %H:%M").to_string();
        prop_assert_eq!(at(&written, Some(DateOrder::MonthFirst)), Some(expected), "{}", written);
    }

    #[test]
    fn any_date_says_only_an_order_it_can_have(text in "[0-9]{1,2}[/-][0-9]{1,2}[/-][0-9]{4}") {
        if let Some(order) = cells::order_of(&text) {
            let other = if order == DateOrder::DayFirst { DateOrder::MonthFirst } else { DateOrder::DayFirst };
            prop_assert_eq!(stamp(&text, Some(other)), Err(DateError::NoDate));
        }
    }

    #[test]
    fn weights_of_one_column_read_back_with_the_mark_that_is_found(
        tenths in prop::collection::vec(1..30_000u32, 1..20),
        mark in prop::sample::select(DecimalMark::ALL.to_vec()),
    ) {
        let style = Style { decimal: mark, ..Style::default() };
        let written: Vec<String> = tenths.iter().map(|n| style.number(f64::from(*n) / 10.0, 1)).collect();
        let found = decimal_mark(written.iter().map(String::as_str), true);
        prop_assert_eq!(found, Ok(Some(mark)));
        for (n, text) in tenths.iter().zip(&written) {
            prop_assert_eq!(parse::mass(text, &style).unwrap().milligrams(), i64::from(*n) * 100);
        }
    }

    #[test]
    fn any_cell_is_a_date_or_none(text in "\\PC{0,60}", order in prop::sample::select(DateOrder::ALL.to_vec())) {
        let stamp = stamp(&text, Some(order));
        prop_assert_eq!(stamp == Err(DateError::TwoWays), false);
        if let Ok(stamp) = stamp {
            prop_assert!(cells::is_date(&text) && stamp.unix_ms(NOW).is_some());
            prop_assert!(stamp.with_time(&text).is_none_or(|timed| timed.has_time()));
        }
    }
}
