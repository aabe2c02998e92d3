### Questions on a set, and what is said of an answer.

where-goes = Where does { $who } go?
when-goes = When does { $who } go?
where-defender = Where is X{ $who }?
what-now = What now?
who-open = Who is open?
who-gets-it = Who gets the ball?

go-on = Go on as drawn

## Who stands where, for who cannot see it

stands = { $who } is { $where }
defends = X{ $who } is { $where }

# Where a cross on the floor is.
cross = { $where }: { $x } { $side ->
    [left] to the left of the ring
   *[right] to the right of the ring
}, { $y } { $depth ->
    [behind] behind it
   *[out] out
}

## How far off an answer was

had-it = You had it.
off = You were { $far } off: { $who } ends { $where }.
off-defender = You were { $far } off.
on-time = You were on time.
early = You were { $n } early
late = You were { $n } late
no-press = You did not press.
not-this = Not { $who }.

## When somebody leaves, and what that does to a screen; $count: how many players $screeners are.

leaves = { $who } leaves at { $t }
to-pass = { $screeners } { $count ->
    [one] is
   *[other] are
} set at { $t }, just before { $who } gets there.
not-set = { $screeners } { $count ->
    [one] is
   *[other] are
} not set by then.
barely-set = { $screeners } would have stood for { $n } only.
stood = { $screeners } had stood for { $n } by then.

## Where a defender is, and what now

guards = X{ $who } is { $far } from { $man }, { $where }.
no-read = Nothing here asks for another way.
