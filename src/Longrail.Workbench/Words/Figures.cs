using Longrail.Drawing;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Outcomes;
using Longrail.Workbench.Tables;
using static System.FormattableString;

namespace Longrail.Workbench.Words;

/// <summary>The readings of an event as numbers that can be asked where they come from.</summary>
internal static class Figures
{
    private const double NoSide = 0.0005;

    /// <summary>The numbers of one event, most telling first; empty if it has none.</summary>
    /// <param name="outcome">The shot.</param>
    /// <param name="index">Index of the event.</param>
    /// <param name="view">Units and numbering.</param>
    public static IReadOnlyList<Figure> Of(Outcome outcome, int index, BenchView view)
    {
        ShotEvent e = outcome.Trace.Events[index];
        return outcome.Readings.Events[index] switch
        {
            TipReading tip => Tip(tip, outcome.Trace.Setup, view),
            MeetReading meet => Meet(meet, outcome.Trace.Setup, view),
            CushionReading cushion => Cushion(cushion, e, outcome.Trace.Setup, view),
            PocketReading pocket => Pocket(pocket, view),
            _ => [],
        };
    }

    private static List<Figure> Tip(TipReading tip, ShotSetup setup, BenchView view)
    {
        CueSpec cue = setup.Equipment.Cue;
        double offset = Math.Sqrt(tip.OffsetRight * tip.OffsetRight + tip.OffsetAbove * tip.OffsetAbove);
        (string, string)[] stroke =
        [
            ("V, stick", Speed(tip.CueSpeed, view)), ("v, ball", Speed(tip.BallSpeed, view)),
            ("b/R", Invariant($"{offset:0.000}")),
            ("m, ball", Invariant($"{setup.Balls[0].Mass * 1000:0.#} g")),
            ("M, cue", Invariant($"{cue.Mass * 1000:0} g")),
            ("e, tip", Invariant($"{cue.TipRestitution:0.00}")),
        ];
        return
        [
            new("ball", Speed(tip.BallSpeed, view), Origins.BallSpeed, stroke),
            new("stick", Speed(tip.CueSpeed, view), Origins.StickSpeed, stroke),
            new("squirt", Sided(tip.SquirtDegrees, "0.00"), Origins.Squirt,
                [("b/R right", Invariant($"{tip.OffsetRight:0.000}")),
                    ("mₑ, end of the shaft", Invariant($"{cue.EndMass * 1000:0.0} g"))]),
            new("spin", Shown.Number(100 * tip.RollRatio, "0") + " % of roll", Origins.TipRoll,
                [("b/R above", Invariant($"{tip.OffsetAbove:0.000}"))]),
        ];
    }

    private static List<Figure> Meet(MeetReading meet, ShotSetup setup, BenchView view)
    {
        BallFriction friction = setup.Equipment.BallSet.Friction;
        var figures = new List<Figure>
        {
            new("cut", Math.Abs(meet.CutDegrees) < 0.05 ? "full" : Sided(meet.CutDegrees, "0.0"), Origins.Cut, []),
            new("hit", Invariant($"{100 * meet.HitFraction:0} % full"), Origins.Fullness,
                [("cut", Sided(meet.CutDegrees, "0.0"))]),
            new("throw", Sided(meet.ThrowDegrees, "0.0"), Origins.Throw,
            [
                ("v along the line of centres", Speed(meet.ClosingSpeed, view)), ("slip", Speed(meet.SlipSpeed, view)),
                ("µ(slip)",
                    Invariant($"{friction.Base:0.000000} + {friction.Gain:0.000} exp(−{friction.Decay:0.000} slip)")),
                ("e, balls", Invariant($"{setup.Equipment.BallSet.Restitution:0.00}")),
                ("surfaces", meet.Gripped ? "gripped" : "slipped all the way"),
            ]),
            new("leaves at", Speed(meet.StruckSpeed, view), Origins.Leaves,
                [("e, balls", Invariant($"{setup.Equipment.BallSet.Restitution:0.00}"))]),
        };
        if (Math.Abs(meet.SideHandedOver) >= NoSide)
        {
            string hand = meet.SideHandedOver > 0 ? "right" : "left";
            figures.Add(new Figure(
                "side handed over", Invariant($"{Math.Abs(meet.SideHandedOver):0.000} R {hand}"), Origins.HandedOver,
                [("cue ball's side on arrival", Invariant($"{meet.StrikerSide:0.000} R"))]));
        }

        return figures;
    }

    private static List<Figure> Cushion(CushionReading c, ShotEvent e, ShotSetup setup, BenchView view)
    {
        CushionSpec cushion = setup.Equipment.Cushion;
        (string, string)[] inputs =
        [
            ("law", cushion.Law == CushionLaw.Yielding ? "yielding" : "impulse"),
            ("e", Invariant($"{cushion.Restitution:0.00}")),
            ("µ, nose", Invariant($"{cushion.Friction:0.00}")),
            ("nose height", Invariant($"{cushion.NoseHeight * 1000:0.0} mm")),
            ("speed in", Speed(c.SpeedIn, view)), ("roll on arrival", Percent(c.RollRatioIn)),
            ("side on arrival", Invariant($"{c.SideIn:0.000} R")),
        ];
        string touch = Invariant($"{DiamondCount.Text(view.Numbering, Seen(c, e, setup, view))}");
        var figures = new List<Figure>();
        if (e.Kind == ShotEventKind.Cushion)
            figures.Add(new Figure("at", touch, Origins.Touch, [("numbering", DiamondCount.Words(view.Numbering))]));
        figures.AddRange(
        [
            new Figure("in", Invariant($"{c.AngleInDegrees:0.0}°"), Origins.AngleIn, []),
            new Figure("out", Invariant($"{c.AngleOutDegrees:0.0}°"), Origins.AngleOut, inputs),
            new Figure("curving to", Invariant($"{c.AngleAfterCurveDegrees:0.0}°"), Origins.AngleAfter, inputs),
            new Figure("speed", $"{Shown.Speed(c.SpeedIn, view.Speed)} to {Speed(c.SpeedOut, view)}",
                Origins.CushionSpeed, inputs),
            new Figure("roll", Percent(c.RollRatioIn), Origins.CushionRoll, []),
        ]);
        if (Math.Abs(c.SideIn) >= NoSide)
        {
            string kind = c.SideIn > 0 ? "running" : "reverse";
            figures.Add(new Figure("side", Invariant($"{Math.Abs(c.SideIn):0.000} R {kind}"), Origins.Side, []));
        }

        if (c.LandingCushion is { } landing && c.LandingDiamonds is { } diamonds)
            figures.Add(new Figure("lands", $"{landing} {DiamondCount.Text(view.Numbering, diamonds)}", Origins.Lands,
                []));
        if (c.LongOfMirrorDiamonds is { } longer)
        {
            figures.Add(new Figure(
                "of mirror", $"{Distance(Math.Abs(longer), c, setup, view)} {(longer >= 0 ? "long" : "short")}",
                    Origins.Mirror,
                [("landing", DiamondCount.Text(view.Numbering, c.LandingDiamonds ?? 0)),
                    ("mirror", DiamondCount.Text(view.Numbering, c.MirrorLandingDiamonds ?? 0))]));
        }

        return figures;
    }

    private static List<Figure> Pocket(PocketReading pocket, BenchView view) =>
    [
        new("speed", Speed(pocket.Speed, view), Origins.PocketSpeed, []),
        new("off the axis", Invariant($"{Math.Abs(pocket.EntryAngleDegrees):0.0}°"), Origins.Entry, []),
        new("clear of the jaw", Invariant($"{pocket.MarginMillimetres:0} mm"), Origins.Margin,
            [("offset from the middle", Invariant($"{pocket.EntryOffsetMillimetres:0.0} mm")),
                ("jaws touched", Invariant($"{pocket.JawTouches}"))]),
    ];

    private static double Seen(CushionReading c, ShotEvent e, ShotSetup setup, BenchView view) =>
        view.Numbering == DiamondNumbering.Sight && e.Cushion is { } cushion
            ? DiamondCount.Sight(cushion, e.BeforeA.Position, e.BeforeA.Velocity,
                setup.Equipment.Table) ?? c.TouchDiamonds
            : c.TouchDiamonds;

    // A distance along the landing cushion, in the unit of lengths.
    private static string Distance(double diamonds, CushionReading c, ShotSetup setup, BenchView view)
    {
        TableSpec table = setup.Equipment.Table;
        CushionName cushion = c.LandingCushion is { } landing ? TableWords.Cushion(landing) : CushionName.Left;
        double metres = diamonds * Diamonds.Length(cushion, table);
        return view.Length switch
        {
            LengthUnit.Inches => Invariant($"{metres / Shown.Factor("in"):0.0} in"),
            LengthUnit.Centimetres => Invariant($"{metres / Shown.Factor("cm"):0.0} cm"),
            _ => $"{DiamondCount.Text(view.Numbering, diamonds)} diamond",
        };
    }

    private static string Percent(double ratio) => Shown.Number(100 * ratio, "0") + " %";

    private static string Speed(double metresPerSecond, BenchView view) =>
        $"{Shown.Speed(metresPerSecond, view.Speed)} {view.Speed}";

    private static string Sided(double degrees, string format)
    {
        string amount = Shown.Number(Math.Abs(degrees), format);
        return amount.AsSpan().IndexOfAnyExcept('0', '.') < 0 ? "none"
            : $"{amount}° {(degrees > 0 ? "left" : "right")}";
    }
}
