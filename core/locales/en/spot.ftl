### Spots, with `$side` (left, right) where there are two: where to, toward which, where, near which.

top = the top
    .to = to {top}
    .toward = toward {top}
    .at = at {top}
    .near = near {top}
deep-top = the deep top
    .to = to {deep-top}
    .toward = toward {deep-top}
    .at = at {deep-top}
    .near = near {deep-top}
logo = the logo
    .to = to {logo}
    .toward = toward {logo}
    .at = at {logo}
    .near = near {logo}
slot = the { $side ->
        [left] left
       *[right] right
    } slot
    .to = to {slot}
    .toward = toward {slot}
    .at = in {slot}
    .near = near {slot}
wing = the { $side ->
        [left] left
       *[right] right
    } wing
    .to = to {wing}
    .toward = toward {wing}
    .at = on {wing}
    .near = near {wing}
low-wing = the { $side ->
        [left] left
       *[right] right
    } low wing
    .to = to {low-wing}
    .toward = toward {low-wing}
    .at = on {low-wing}
    .near = near {low-wing}
corner = the { $side ->
        [left] left
       *[right] right
    } corner
    .to = to {corner}
    .toward = toward {corner}
    .at = in {corner}
    .near = near {corner}
short-corner = the { $side ->
        [left] left
       *[right] right
    } short corner
    .to = to {short-corner}
    .toward = toward {short-corner}
    .at = in {short-corner}
    .near = near {short-corner}
dunker-spot = the { $side ->
        [left] left
       *[right] right
    } dunker spot
    .to = to {dunker-spot}
    .toward = toward {dunker-spot}
    .at = in {dunker-spot}
    .near = near {dunker-spot}
block = the { $side ->
        [left] left
       *[right] right
    } block
    .to = to {block}
    .toward = toward {block}
    .at = on {block}
    .near = near {block}
mid-post = the { $side ->
        [left] left
       *[right] right
    } mid post
    .to = to {mid-post}
    .toward = toward {mid-post}
    .at = at {mid-post}
    .near = near {mid-post}
elbow = the { $side ->
        [left] left
       *[right] right
    } elbow
    .to = to {elbow}
    .toward = toward {elbow}
    .at = at {elbow}
    .near = near {elbow}
high-elbow = the { $side ->
        [left] left
       *[right] right
    } high elbow
    .to = to {high-elbow}
    .toward = toward {high-elbow}
    .at = at {high-elbow}
    .near = near {high-elbow}
high-post = the high post
    .to = to {high-post}
    .toward = toward {high-post}
    .at = at {high-post}
    .near = near {high-post}
nail = the nail
    .to = to {nail}
    .toward = toward {nail}
    .at = at {nail}
    .near = near {nail}
mid-paint = the mid paint
    .to = to {mid-paint}
    .toward = toward {mid-paint}
    .at = in {mid-paint}
    .near = near {mid-paint}
low-paint = the low paint
    .to = to {low-paint}
    .toward = toward {low-paint}
    .at = in {low-paint}
    .near = near {low-paint}
rim = the rim
    .to = to {rim}
    .toward = toward {rim}
    .at = at {rim}
    .near = near {rim}
blob = the { $side ->
        [left] left
       *[right] right
    } baseline throw-in
    .to = to {blob}
    .toward = toward {blob}
    .at = at {blob}
    .near = near {blob}
slob = the { $side ->
        [left] left
       *[right] right
    } sideline throw-in
    .to = to {slob}
    .toward = toward {slob}
    .at = at {slob}
    .near = near {slob}
