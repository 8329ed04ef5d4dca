using System.Text;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Outcomes;
using static System.FormattableString;

namespace Longrail.Cli.Text;

/// <summary>An outcome as text for people: what happened, line by line, in the trade's words.</summary>
public static class OutcomeText
{
    // Lines longer than this are broken between phrases.
    private const int Width = 110;

    /// <summary>The text, ending with a line break.</summary>
    public static string Of(Outcome outcome)
    {
        var text = new StringBuilder();
        AppendHead(text, outcome);
        AppendEvents(text, outcome);
        AppendEnd(text, outcome);
        return text.ToString();
    }

    private static void AppendHead(StringBuilder text, Outcome outcome)
    {
        Scene scene = outcome.Scene.AsUsed;
        if (scene.Title is { Length: > 0 } title)
            Line(text, PlainText.Of(title));
        TableSpec table = outcome.Trace.Setup.Equipment.Table;
        Line(text, Invariant($"{scene.Table!.Preset}, {table.Length:0.###} x {table.Width:0.###} m, ")
            + $"cloth {scene.Cloth!.State}, balls {scene.BallSet!.State}, cushions {scene.Cushion!.Law}");
        Line(text, "");
    }

    private static void AppendEvents(StringBuilder text, Outcome outcome)
    {
        IReadOnlyList<string> ids = outcome.Scene.BallIds;
        int idWidth = Math.Max(4, ids.Max(id => id.Length));
        Line(text, $"{"time",8}  {"ball".PadRight(idWidth)}  what happens");
        for (int i = 0; i < outcome.Trace.Events.Count; i++)
        {
            ShotEvent e = outcome.Trace.Events[i];
            string start = Invariant($"{e.Time,6:0.000} s  {ids[e.BallA].PadRight(idWidth)}  ");
            AppendPhrases(text, start, EventPhrases.Of(e, outcome.Readings.Events[i], ids));
        }

        if (outcome.Trace.Events.Count == 0)
            Line(text, "          nothing moves");
        Line(text, "");
    }

    private static void AppendEnd(StringBuilder text, Outcome outcome)
    {
        Trace trace = outcome.Trace;
        Line(text, trace.Ended switch
        {
            StopReason.AtRest => Invariant($"At rest after {trace.Duration:0.000} s"),
            StopReason.TimeLimit => Invariant($"Followed for {trace.Duration:0.000} s"),
            StopReason.EventLimit => Invariant(
                $"Ended after {trace.Events.Count} events, the most that are followed, at {trace.Duration:0.000} s"),
            _ => Invariant($"Ended at {trace.Duration:0.000} s: events went on without time going on"),
        });
        IReadOnlyList<string> ids = outcome.Scene.BallIds;
        int idWidth = ids.Max(id => id.Length);
        for (int i = 0; i < ids.Count; i++)
            Line(text, $"  {ids[i].PadRight(idWidth)}  {EndOf(trace.Balls[i], trace.Setup.Equipment.Table)}");

        ShotReading shot = outcome.Readings.Shot;
        if (shot.DoubleKiss)
            Line(text, "Double kiss: cue ball and object ball meet again");
        else if (shot.KissGapMillimetres is { } gap)
            Line(text, Invariant($"Kiss gap {gap:0.0} mm at {shot.KissGapTime:0.000} s"));
        foreach (string caution in shot.Cautions)
            Line(text, $"Caution: {caution}");
        Line(text, "");
        Line(text, "Diamonds are those of the ball's centre, counted at the nose:"
            + " along from the head, across from the right.");
        Line(text, "Angles at a cushion are from its normal: 0 is straight in.");
    }

    private static string EndOf(BallEnd end, TableSpec table)
    {
        Vec2 p = end.State.Position;
        return end.Phase switch
        {
            MotionPhase.Pocketed => $"down in {TableWords.Of(end.Pocket!.Value)}",
            MotionPhase.AtRest => Place(p, table),
            _ => Invariant($"{Place(p, table)}, moving at {end.State.Velocity.Length:0.00} m/s"),
        };
    }

    private static string Place(Vec2 p, TableSpec table) => Invariant(
        $"{p.X:0.000}, {p.Y:0.000} m = {p.X / table.DiamondAlong:0.00} along, {p.Y / table.DiamondAcross:0.00} across");

    private static void AppendPhrases(StringBuilder text, string start, List<string> phrases)
    {
        var line = new StringBuilder(start);
        bool isEmpty = true;
        foreach (string phrase in phrases)
        {
            if (!isEmpty && line.Length + 2 + phrase.Length > Width)
            {
                Line(text, line.Append(',').ToString());
                line.Clear().Append(' ', start.Length);
                isEmpty = true;
            }

            line.Append(isEmpty ? "" : ", ").Append(phrase);
            isEmpty = false;
        }

        Line(text, line.ToString());
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
