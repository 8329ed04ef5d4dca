using Longrail.Coaching.Trials;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>The upper half of a trial's sheet: the table with the balls, and how to set up, strike and
/// measure.</summary>
internal sealed class TrialSetUp
{
    private static readonly string[] _reminders =
    [
        "Diamonds: of the ball's centre, counted at the nose, along 0-8 from the head, across 0-4 from the right.",
        "Mark the places with reinforcement rings. A ball that stood wrong: set up again, that shot is not counted.",
        "Another condition was played than the row says: write down the one that was played.",
        "A poor stroke counts like any other; only what cannot be read is left empty.",
    ];

    // NIST Special Publication 811: exact.
    private const double MetresPerSecondInMph = 0.44704;

    private readonly TrialPlan _plan;
    private readonly ReadyScene _scene;
    private readonly Trace _trace;
    private readonly TableSpec _table;

    internal TrialSetUp(TrialPlan plan, ReadyScene scene)
    {
        _plan = plan;
        _scene = scene;
        _trace = ShotRunner.Run(scene.Setup);
        _table = scene.Setup.Equipment.Table;
    }

    internal void Draw(SvgWriter svg, double x, double y, double width, double height)
    {
        double room = 0.56 * width;
        double scale = (room - 160) / (_table.Length + 2 * TablePlan.RailWidth);
        double above = y + 60;
        var view = new Viewport(
            x + 50 + scale * TablePlan.RailWidth, above + scale * (_table.Width + TablePlan.RailWidth), scale);
        TablePlan.Draw(svg, view, _table);
        DrawShot(svg, view);
        double below = view.Bottom + scale * TablePlan.RailWidth + TablePlan.Margin + 20;
        DrawWords(svg, x, below, room, _reminders, Ink.Small);
        DrawInstructions(svg, x + room + 30, y + 20, width - room - 30, height - 40);
    }

    private void DrawShot(SvgWriter svg, Viewport view)
    {
        svg.Begin("shot");
        StrokeRecord stroke = _scene.Setup.Stroke!;
        for (int ball = 0; ball < _scene.BallIds.Count; ball++)
        {
            BallTrack track = BallTrack.Of(_trace, ball);
            if (_scene.BallIds[ball] == _plan.Ball || ball == stroke.Ball)
            {
                string dash = ball == stroke.Ball ? "4 8" : "14 8";
                TrackDrawing.DrawCentre(svg, view, track, new Pen(Ink.Soft, Ink.Thin, dash));
            }
        }

        for (int ball = 0; ball < _scene.BallIds.Count; ball++)
        {
            ShotBall placed = _scene.Setup.Balls[ball];
            SvgPoint at = view.ToSheet(TablePoint.From(placed.Start.Position));
            double radius = view.ToSheet(placed.Radius);
            svg.Circle(at, radius, ball == stroke.Ball ? "#ffffff" : "#bbbbbb", new Pen(Ink.Graphite, Ink.Thin));
            svg.Text(
                at.Moved(radius + 6, -radius - 2),
                TextWidth.Fit(SvgText.Clean(_scene.BallIds[ball]), 200, Ink.Small, bold: true),
                new TextStyle(Ink.Small, Ink.Graphite, Bold: true));
        }

        svg.End();
    }

    private void DrawInstructions(SvgWriter svg, double x, double y, double width, double height)
    {
        svg.Begin("set-up");
        double line = Heading(svg, x, y, "Set up");
        line = DrawPlaces(svg, x, line, width);
        line = Heading(svg, x, line + 26, "Strike");
        line = DrawWords(svg, x, line, width, StrikeWords(), Ink.Body);
        line = Heading(svg, x, line + 26, "Play and write down");
        DrawWords(svg, x, line, width, MeasureWords(), Ink.Body);
        svg.End();
    }

    private double DrawPlaces(SvgWriter svg, double x, double y, double width)
    {
        var small = new TextStyle(Ink.Small, Ink.Soft, Anchor: TextAnchor.End);
        double[] ends = [x + 0.42 * width, x + 0.58 * width, x + 0.79 * width, x + width];
        string[] heads = ["along", "across", "from head", "from right"];
        string[] units = ["diamonds", "", "mm", "mm"];
        for (int c = 0; c < 4; c++)
        {
            svg.Text(new SvgPoint(ends[c], y + 24), heads[c], small);
            svg.Text(new SvgPoint(ends[c], y + 50), units[c], small);
        }

        y += 58;
        var figure = new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.End);
        for (int ball = 0; ball < _scene.BallIds.Count; ball++)
        {
            Vec2 at = _scene.Setup.Balls[ball].Start.Position;
            y += 38;
            svg.Text(
                new SvgPoint(x, y),
                TextWidth.Fit(SvgText.Clean(_scene.BallIds[ball]), 0.2 * width, Ink.Body, bold: true),
                new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
            string[] cells =
            [
                Invariant($"{at.X / _table.DiamondAlong:0.00}"), Invariant($"{at.Y / _table.DiamondAcross:0.00}"),
                Invariant($"{1000 * at.X:0}"), Invariant($"{1000 * at.Y:0}"),
            ];
            for (int c = 0; c < 4; c++)
                svg.Text(new SvgPoint(ends[c], y), cells[c], figure);
        }

        string from = "From the noses of the head and of the right cushion to the ball's centre.";
        return DrawWords(svg, x, y + 6, width, [from], Ink.Small);
    }

    private List<string> StrikeWords()
    {
        StrokeRecord record = _scene.Setup.Stroke!;
        Stroke stroke = record.Stroke;
        AimPoint aim = StickLine.AimPoint(_scene.Setup.Balls[record.Ball].Start.Position, stroke.Aim, _table);
        double slowing = _scene.Setup.Equipment.Cloth.RollingFriction * _table.Gravity;
        double rollOut = stroke.Speed * stroke.Speed / (2 * slowing);
        TipReading? tip = _trace.Events.Count > 0 ? TraceReadings.Of(_trace).Events[0] as TipReading : null;
        var words = new List<string>
        {
            Invariant($"Stick towards {Diamonds.Word(aim.Cushion)} cushion {aim.Diamonds:0.00} (nose), ")
                + "in every condition alike.",
            Invariant($"Ball speed {stroke.Speed:0.00} m/s ({stroke.Speed / MetresPerSecondInMph:0.0} mph): ")
                + Invariant($"a rolling ball at that speed runs {rollOut / _table.Length:0.0} lengths, ")
                + "cushions not counted.",
        };
        if (tip is not null)
            words.Add(tip is { ShaftRightTips: 0, ShaftAboveTips: 0 }
                ? "Tip in the centre."
                : $"Tip {Sheets.TipInset.Words(tip.ShaftRightTips, "right", "left")}, "
                    + $"{Sheets.TipInset.Words(tip.ShaftAboveTips, "above", "below")} (of its width).");
        return words;
    }

    private List<string> MeasureWords()
    {
        var words = new List<string>
        {
            Invariant($"{_plan.Shots} shots of each, in the order of the rows. ")
                + "Count every shot; leave a cell empty that was not read.",
        };
        if (_plan.Target is { } target)
            words.Add($"Landing: where the centre of the {_plan.Ball} comes to the {TableWords.Of(target)} cushion, "
                + $"mm from the {(Diamonds.IsLong(target) ? "head" : "right")} nose line.");
        words.Add("Speed: of the cue ball as it leaves the tip, measured the same way every time.");
        words.Add(_plan.Looks.Count == 1
            ? "Nobody adds up before the end."
            : "Weigh at the looks that are marked, and at no other time.");
        return words;
    }

    private static double Heading(SvgWriter svg, double x, double y, string text)
    {
        svg.Text(new SvgPoint(x, y + 32), text, new TextStyle(32, Ink.Graphite, Bold: true));
        return y + 44;
    }

    private static double DrawWords(
        SvgWriter svg, double x, double y, double width, IReadOnlyList<string> words, double size)
    {
        foreach (string word in words)
        {
            foreach (string part in TextWidth.Wrap(SvgText.Clean(word), width, size, 5))
            {
                y += 1.28 * size;
                svg.Text(new SvgPoint(x, y), part, new TextStyle(size, Ink.Graphite));
            }

            y += 0.35 * size;
        }

        return y;
    }
}
