using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Outcomes;
using static System.FormattableString;

namespace Longrail.Workbench.Tables;

/// <summary>Something that a comparison can change, and levels to start from.</summary>
/// <param name="Path">The scene's field.</param>
/// <param name="Words">What the page calls it.</param>
internal sealed record ContrastFactor(string Path, string Words)
{
    /// <summary>What the page offers.</summary>
    public static IReadOnlyList<ContrastFactor> All { get; } =
    [
        new("stroke.speed", "ball speed"), new("stroke.tip.right", "tip to the right"),
        new("stroke.tip.above", "tip above"),
        new("stroke.elevation", "butt raised"), new("stroke.aim", "stick's line"),
        new("ballSet.state", "state of the balls"),
        new("cloth.state", "state of the cloth"), new("cue.preset", "cue"), new("cushion.law", "cushion law"),
        new("cushion.restitution", "cushion restitution"), new("cushion.friction", "cushion friction"),
    ];

    /// <summary>Levels around where the table stands, as one types them.</summary>
    public string Levels(Outcome outcome, string speedUnit)
    {
        if (SceneFields.All.First(field => field.Path == Path).Words is { } words)
            return string.Join(", ", words);
        TipReading? tip = outcome.Readings.Events.OfType<TipReading>().FirstOrDefault();
        double speed = (tip?.BallSpeed ?? 2) / Shown.Factor(speedUnit);
        double aim = tip?.AimDegrees ?? 0;
        return Path switch
        {
            "stroke.speed" => string.Join(", ",
                new[] { 0.7, 1, 1.4 }.Select(part => $"{Shown.Number(part * speed, "0.0#")} {speedUnit}")),
            "stroke.tip.right" => "-1/8 tip, 0, 1/8 tip",
            "stroke.tip.above" => "-0.2 R, 0, 0.2 R",
            "stroke.elevation" => "0 deg, 3 deg, 6 deg",
            "stroke.aim" => Invariant($"{aim - 0.5:0.00} deg, {aim:0.00} deg, {aim + 0.5:0.00} deg"),
            "cushion.restitution" => "0.85, 0.9, 0.95",
            _ => "0.12, 0.16, 0.2",
        };
    }

    /// <summary>The levels of a text, between commas.</summary>
    public static IReadOnlyList<string> Split(string text) =>
        text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
