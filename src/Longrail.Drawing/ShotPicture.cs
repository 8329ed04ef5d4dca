using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing;

/// <summary>Draws one shot as a draughtsman's sheet.</summary>
public static class ShotPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <remarks>The head is on the left. A double line is a skid, a single one a roll; a tick crosses the path every
    /// 0.1 s. Not a film: for the balls between the ticks ask the trace.</remarks>
    /// <exception cref="ArgumentException">Names or stripe axes are not one per ball.</exception>
    public static string Draw(ShotPictureInput input) => ShotSheet.Draw(Reduce(input));

    /// <summary>The table alone, for a small screen or a page that has its own words around it: no frame, no key, no
    /// title block; the type is larger against the table.</summary>
    /// <exception cref="ArgumentException">Names or stripe axes are not one per ball.</exception>
    public static string DrawPlan(ShotPictureInput input) => ShotSheet.DrawPlan(Reduce(input));

    /// <summary>The table alone in two parts without a sheet around them, for a page that renews the shot many times a
    /// second over a table that stays; each numbered event is a group of class "event".</summary>
    /// <param name="input">The shot.</param>
    /// <param name="width">Width of the sheet, tenths of a millimetre, from 400 to 10000; type keeps its size, so a
    /// narrow sheet has larger type against the table.</param>
    /// <exception cref="ArgumentException">Names or stripe axes are not one per ball.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range.</exception>
    public static Plan DrawParts(ShotPictureInput input, double width)
    {
        if (width is not (>= 400 and <= 10000))
            throw new ArgumentOutOfRangeException(nameof(width), width, "A plan is 400 to 10000 units wide.");
        return ShotSheet.DrawParts(Reduce(input), width);
    }

    /// <summary>What happened, line by line in the words of the drawing's key, with the numbers that stand in circles
    /// on it.</summary>
    /// <exception cref="ArgumentException">Names or stripe axes are not one per ball.</exception>
    public static IReadOnlyList<PlanLine> Lines(ShotPictureInput input)
    {
        var lines = new List<PlanLine>();
        int number = 0;
        for (int k = 0; k < input.Trace.Events.Count; k++)
        {
            ShotEvent e = input.Trace.Events[k];
            bool numbered = IsNumbered(e);
            lines.Add(new PlanLine(
                k, numbered ? ++number : null, e.Time, EventWords.What(e, input.Names),
                EventWords.Reading(input.Readings.Events[k])));
        }

        return lines;
    }

    private static ShotDrawing Reduce(ShotPictureInput input)
    {
        int count = input.Trace.Setup.Balls.Count;
        if (input.Names.Count != count || (input.StripeAxes is { } axes && axes.Count != count))
        {
            throw new ArgumentException(
                $"The shot has {count} balls: give one name and one stripe axis (or null) for each.", nameof(input));
        }

        Trace trace = input.Trace;
        StrokeRecord? stroke = trace.Setup.Stroke;
        TipReading? tip = input.Readings.Events.OfType<TipReading>().FirstOrDefault();
        return new ShotDrawing
        {
            Title = input.Title,
            Equipment = trace.Setup.Equipment,
            Tracks = BallTrack.AllOf(trace),
            Names = input.Names,
            StripeAxes = input.StripeAxes ?? new Vec3?[input.Names.Count],
            Key = KeyRows(input),
            Struck = input.Readings.Shot.StruckBall,
            Ghost = Ghost(trace, input.Readings.Shot),
            Tip = tip is null || stroke is null
                ? null
                : new TipView(tip, trace.Setup.Equipment.Cue, trace.Setup.Balls[stroke.Ball].Radius),
            Notes = [.. EventWords.Notes(trace, input.Readings.Shot)],
            TableName = input.TableName,
            Date = input.Date,
        };
    }

    private static GhostBall? Ghost(Trace trace, ShotReading shot)
    {
        ShotEvent? first = trace.Events.FirstOrDefault(
            e => e.Kind == ShotEventKind.BallsMeet && e.BallA == shot.StruckBall);
        return first is null
            ? null
            : new GhostBall(
                first.BallA, TablePoint.From(first.BeforeA.Position),
                first.BallB!.Value, TablePoint.From(first.BeforeB!.Value.Position));
    }

    private static List<KeyRow> KeyRows(ShotPictureInput input)
    {
        var rows = new List<KeyRow>();
        for (int k = 0; k < input.Trace.Events.Count; k++)
        {
            ShotEvent e = input.Trace.Events[k];
            if (!IsNumbered(e))
                continue;
            rows.Add(new KeyRow(
                rows.Count + 1, e.Time, TablePoint.From(e.BeforeA.Position), Beside(e),
                EventWords.What(e, input.Names), EventWords.Reading(input.Readings.Events[k])));
        }

        return rows;
    }

    // Where a skid ends and where a ball stops is seen on the path itself.
    private static bool IsNumbered(ShotEvent e) => e.Kind is not (ShotEventKind.SlideEnds or ShotEventKind.Stops);

    // A label stands outside the bed at a cushion, behind the ball at a stroke, above it elsewhere.
    private static SvgPoint Beside(ShotEvent e) => e.Kind switch
    {
        ShotEventKind.Tip => Viewport.Direction(-e.AfterA.Velocity.Normalized()),
        ShotEventKind.Cushion or ShotEventKind.Jaw => e.Cushion switch
        {
            CushionName.Head => new SvgPoint(-1, 0),
            CushionName.Foot => new SvgPoint(1, 0),
            CushionName.Right => new SvgPoint(0, 1),
            _ => new SvgPoint(0, -1),
        },
        _ => new SvgPoint(0, -1),
    };
}
