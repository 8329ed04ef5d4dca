using Longrail.Physics.Equipment;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Fields;

public static partial class SceneFields
{
    private const int MostCushionsOfABank = 4;

    // Well beyond any table: it only keeps nonsense from looking like a place.
    private static NumberRange AnyPlace => new(-100, 100);

    private static NumberRange AnyAim => new(-2 * Math.PI, 2 * Math.PI, Words: "from -360 to 360 deg");

    private static Section<SceneBall> Ball => new(
        new TextField<SceneBall>(
            "id", b => b.Id, (b, v) => b.Id = v, null,
            "The ball's name within the scene, as in \"cue\" or \"9\".", isBallId: true),
        new NumberField<SceneBall>(
            "x", QuantityKind.Place, AnyPlace, b => b.X, (b, v) => b.X = v,
            null, "Distance of the ball's centre from the head cushion's nose line.")
        {
            Replaces = b =>
            {
                b.Along = null;
                if (b.FrozenTo is CushionName.Head or CushionName.Foot)
                    b.FrozenTo = null;
            },
        },
        new NumberField<SceneBall>(
            "y", QuantityKind.Place, AnyPlace, b => b.Y, (b, v) => b.Y = v,
            null, "Distance of the ball's centre from the right cushion's nose line, as seen from the head.")
        {
            Replaces = b =>
            {
                b.Across = null;
                if (b.FrozenTo is CushionName.Left or CushionName.Right)
                    b.FrozenTo = null;
            },
        },
        new NumberField<SceneBall>(
            "along", QuantityKind.DiamondPlace, new NumberRange(0, 8), b => b.Along, (b, v) => b.Along = v,
            null, "Instead of x: diamonds from the head.")
        {
            Replaces = b =>
            {
                b.X = null;
                if (b.FrozenTo is CushionName.Head or CushionName.Foot)
                    b.FrozenTo = null;
            },
        },
        new NumberField<SceneBall>(
            "across", QuantityKind.DiamondPlace, new NumberRange(0, 4), b => b.Across, (b, v) => b.Across = v,
            null, "Instead of y: diamonds from the right.")
        {
            Replaces = b =>
            {
                b.Y = null;
                if (b.FrozenTo is CushionName.Left or CushionName.Right)
                    b.FrozenTo = null;
            },
        },
        new WordField<SceneBall>(
            "frozenTo", [.. TableWords.Cushions],
            b => b.FrozenTo is { } cushion ? TableWords.Of(cushion) : null,
            (b, v) => b.FrozenTo = v is null ? null : TableWords.Cushion(v),
            null, "The cushion that the ball touches; stands instead of the coordinate square to that cushion.")
        {
            ReplacesOnceRead = b =>
            {
                if (b.FrozenTo is CushionName.Head or CushionName.Foot)
                    b.X = b.Along = null;
                else if (b.FrozenTo is not null)
                    b.Y = b.Across = null;
            },
        },
        new NumberField<SceneBall>(
            "diameter", QuantityKind.Length, new NumberRange(0.02, 0.15), b => b.Diameter, (b, v) => b.Diameter = v,
            "as ballSet.diameter", "This ball's own diameter."),
        new NumberField<SceneBall>(
            "mass", QuantityKind.Mass, new NumberRange(0.01, 2), b => b.Mass, (b, v) => b.Mass = v,
            "as ballSet.mass", "This ball's own mass."),
        new PartField<SceneBall, SceneStripe>(
            "stripe", Stripe, b => b.Stripe, (b, v) => b.Stripe = v, "no stripe", "The ball's stripe."));

    private static Section<SceneStripe> Stripe => new(
        new VectorField<SceneStripe>(
            "axis", 3, QuantityKind.Ratio, NumberRange.Any, s => s.Axis, (s, v) => s.Axis = v,
            "[0, 1, 0]", "The axis about which the stripe runs at the start: along, across, up; of any length but 0."));

    private static Section<SceneStroke> Stroke => new(
        new TextField<SceneStroke>(
            "ball", s => s.Ball, (s, v) => s.Ball = v, "\"cue\" if there is one, otherwise the first ball",
            "The ball that is struck.", isBallId: true),
        new PartField<SceneStroke, SceneAim>(
            "aim", Aim, s => s.Aim, (s, v) => s.Aim = v, "0",
            "Where the stick points: an angle counter-clockwise from the direction head to foot, or a cut or a "
            + "bank to be solved.",
            new NumberField<SceneAim>(
                "aim", QuantityKind.Angle, AnyAim, a => a.Angle, (a, v) => a.Angle = v,
                "0", "Where the stick points, counter-clockwise from the direction head to foot.")),
        new NumberField<SceneStroke>(
            "speed", QuantityKind.Speed, new NumberRange(0, Fastest, WithoutLeast: true),
            s => s.Speed, (s, v) => s.Speed = v,
            "2 m/s", "Speed of the ball as it leaves the tip.")
        {
            Replaces = s => s.CueSpeed = null,
        },
        new NumberField<SceneStroke>(
            "cueSpeed", QuantityKind.Speed, new NumberRange(0, Fastest, WithoutLeast: true),
            s => s.CueSpeed, (s, v) => s.CueSpeed = v,
            null, "Instead of speed: speed of the stick just before contact.")
        {
            Replaces = s => s.Speed = null,
        },
        new PartField<SceneStroke, SceneTip>(
            "tip", Tip, s => s.Tip, (s, v) => s.Tip = v, "the centre of the ball", "Where the tip strikes."),
        new NumberField<SceneStroke>(
            "elevation", QuantityKind.Angle,
            new NumberRange(0, RightAngle, WithoutMost: true, Words: "from 0 to less than 90 deg"),
            s => s.Elevation, (s, v) => s.Elevation = v,
            "0", "How far the butt is raised: angle of the stick to the bed."));

    private static Section<SceneTip> Tip => new(
        new NumberField<SceneTip>(
            "right", QuantityKind.TipOffset, new NumberRange(-0.1, 0.1), t => t.Right, (t, v) => t.Right = v,
            "0", "To the right of the centre, seen along the stick: the point of contact (m, R), or a shift of the "
            + "shaft (tip)."),
        new NumberField<SceneTip>(
            "above", QuantityKind.TipOffset, new NumberRange(-0.1, 0.1), t => t.Above, (t, v) => t.Above = v,
            "0", "Above the centre, square to the stick: the point of contact (m, R), or a shift of the shaft (tip)."));

    private static Section<SceneAim> Aim => new(
        new TextField<SceneAim>(
            "at", a => a.At, (a, v) => a.At = v, null, "The ball to be cut.", isBallId: true)
        {
            Replaces = ForgetSolution,
        },
        new NumberField<SceneAim>(
            "cut", QuantityKind.CutAngle,
            new NumberRange(-RightAngle, RightAngle, WithoutLeast: true, WithoutMost: true,
                Words: "less than 90 deg to either side"),
            a => a.Cut, (a, v) => a.Cut = v,
            "0", "The cut angle; positive, or with the word left, sends the ball to the left of the line of aim.")
        {
            Replaces = ForgetSolution,
        },
        new TextField<SceneAim>(
            "bank", a => a.Bank, (a, v) => a.Bank = v, null, "The ball to be banked.", isBallId: true)
        {
            Replaces = ForgetSolution,
        },
        new WordField<SceneAim>(
            "to", [.. TableWords.Pockets],
            a => a.To is { } pocket ? TableWords.Of(pocket) : null,
            (a, v) => a.To = v is null ? null : TableWords.Pocket(v),
            null, "The pocket for the bank.")
        {
            Replaces = ForgetSolution,
        },
        new WordListField<SceneAim>(
            "off", [.. TableWords.Cushions], MostCushionsOfABank,
            a => a.Off?.ConvertAll(TableWords.Of), (a, v) => a.Off = v?.ConvertAll(TableWords.Cushion),
            null, "The cushions of the bank, in the order in which the ball meets them.")
        {
            Replaces = ForgetSolution,
        },
        new NumberField<SceneAim>(
            "solved", QuantityKind.Angle, AnyAim, a => a.Solved, (a, v) => a.Solved = v,
            null,
            "The angle of the stick that was found before; it is taken as it stands and nothing is solved again."));

    private static Section<SceneLaunch> Launch => new(
        new TextField<SceneLaunch>(
            "ball", l => l.Ball, (l, v) => l.Ball = v, null, "The ball that moves.", isBallId: true),
        new VectorField<SceneLaunch>(
            "velocity", 2, QuantityKind.Speed, new NumberRange(-Fastest, Fastest),
            l => l.Velocity, (l, v) => l.Velocity = v,
            "[0, 0]", "Velocity along the table and across."),
        new VectorField<SceneLaunch>(
            "spin", 3, QuantityKind.AngularSpeed, new NumberRange(-5000, 5000), l => l.Spin, (l, v) => l.Spin = v,
            "[0, 0, 0]",
            "Spin about the axes along, across and up; right-handed, so rolling to the foot has a positive second "
            + "number."));

    // A task that has been changed must be solved anew.
    private static void ForgetSolution(SceneAim aim) => aim.Solved = null;
}
