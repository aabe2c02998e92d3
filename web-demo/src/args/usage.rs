//! What the tool can be asked for, in words and as a table.

/// What `backcut help` prints.
pub(crate) const USAGE: &str = "\
backcut — a written set play that moves truthfully

  backcut check FILE… [--json] [--strict]  what is wrong with set files, and what a coach would stop
  backcut time FILE [--json]               when everything happens, and what holds it up
  backcut looks FILE [--json]              what the set yields against each coverage, seconds open
  backcut frames FILE --fps N              every player and the ball, as JSON Lines
  backcut draw FILE --at SECONDS [-o OUT]  one instant as a picture (SVG)
  backcut draw FILE --beat N [-o OUT]      one beat with its trails as a picture (SVG)
  backcut card FILE [--player N]           role cards: each player's steps, what to wait for, where to look
  backcut card FILE -o OUT                 the same as a page to print, two cards to a sheet (HTML; - for standard output)
  backcut show FILE [--port N]             a page of the file; reloads when you save
  backcut page FILE… [-o OUT]              one file that plays without a network, and can be printed (HTML)
  backcut site SOURCE OUT                  the demo playbook, from SOURCE/sets and SOURCE/site
  backcut serve DIR [--port N]             a folder of pages on a local address
  backcut link FILE [--base URL] [--json]  the whole set as a link, no server needed
  backcut open LINK [-o OUT]               the set file that a link holds; LINK may be - for standard input
  backcut schema                           the JSON Schema of a set file

FILE may be - for standard input (not for show).

  --court NAME   fiba, nba, wnba, ncaa-men, ncaa-women, nfhs      instead of the file's
  --level NAME   elite, elite women, adult, high school, u14, u12, recreational
  --mirror       left and right exchanged
  --lang TAG     check, time, looks, draw, card: en, or es for Spanish, es-MX with a decimal point
  --units U      check, time, looks, draw, card: m, or ft for feet and inches, instead of the court's own measure
  --coverage C   looks: only this one, or all (else all); frames, draw, page: with defenders X1 to X5;
                 check: what is found against it (else the file's, else chase). chase, over, through, under,
                 top-lock, switch, show, drop, ice, blitz, weak-side-tag
  --at S, --until S, --beat N, --read N, --follow 1,4, --coverage C, --speed R, --paused
                 link: what it shows when it is opened
  --read N       check, time, looks, frames, draw, card: the branch by the read N; 2.1 is the first read of the second
  --strict       check: a violation counts as a fault
  --player N     card: only this player's
  --dark         draw: for a dark page
  --ghosts       draw: with where everybody stands when a walk-through stops next
  --beat N       page: the beat that is drawn before anything moves (else 1)
  --title WORDS  page: its title (else the set's)
  --base URL     site: the address it will have, for those who link to it; link: what stands before its #
  --width PX     draw: width of the picture

Exit status: 0 clean, 1 faults in the input, 2 wrong use.
";

/// The options that `command` takes.
pub(super) fn options(command: &str) -> &'static [&'static str] {
    match command {
        "check" => &[
            "--json",
            "--strict",
            "--lang",
            "--units",
            "--coverage",
            "--read",
            "--court",
            "--level",
            "--mirror",
        ],
        "time" => &[
            "--json", "--lang", "--units", "--read", "--court", "--level", "--mirror",
        ],
        "looks" => &[
            "--json",
            "--lang",
            "--units",
            "--coverage",
            "--read",
            "--court",
            "--level",
            "--mirror",
        ],
        "frames" => &[
            "--fps",
            "--coverage",
            "--read",
            "--court",
            "--level",
            "--mirror",
        ],
        "draw" => &[
            "--read",
            "--at",
            "--beat",
            "-o",
            "--width",
            "--dark",
            "--ghosts",
            "--lang",
            "--units",
            "--coverage",
            "--court",
            "--level",
            "--mirror",
        ],
        "card" => &[
            "--player", "-o", "--lang", "--units", "--read", "--court", "--level", "--mirror",
        ],
        "page" => &[
            "--title",
            "--beat",
            "-o",
            "--coverage",
            "--court",
            "--level",
            "--mirror",
        ],
        "show" => &["--port", "--court", "--level", "--mirror"],
        "link" => &[
            "--at",
            "--until",
            "--beat",
            "--read",
            "--follow",
            "--coverage",
            "--speed",
            "--paused",
            "--base",
            "--json",
            "--court",
            "--level",
            "--mirror",
        ],
        "open" => &["-o"],
        "site" => &["--base"],
        "serve" => &["--port"],
        _ => &[],
    }
}
