using Longrail.Coaching.Players;
using Longrail.Scenes.Compiling;

namespace Longrail.Coaching.Charts;

/// <summary>The question for a chart or a map as a user types it; what is null is left to its default.</summary>
/// <remarks>The names of the members, in small letters and with hyphens, are the paths of the errors that
/// <see cref="ChartReader"/> reports.</remarks>
public sealed record ChartQuestion
{
    /// <summary>A scene for the equipment, and for the names of its balls; or null.</summary>
    public ReadyScene? Scene { get; init; }

    /// <summary>The name of a table preset, where there is no scene.</summary>
    public string? Table { get; init; }

    /// <summary>The bank: one of <see cref="ChartWords.Kinds"/>.</summary>
    public string? Bank { get; init; }

    /// <summary>The pocket's name.</summary>
    public string? Pocket { get; init; }

    /// <summary>The cushion's name.</summary>
    public string? Off { get; init; }

    /// <summary>Where a kick goes: "6,2" in diamonds, or a ball of the scene.</summary>
    public string? Target { get; init; }

    /// <summary>"1,2 to 3.5,2": a line of places.</summary>
    public string? Line { get; init; }

    /// <summary>How many places the line has.</summary>
    public string? Places { get; init; }

    /// <summary>"7x3": a grid of places, along and across.</summary>
    public string? Grid { get; init; }

    /// <summary>"1,1 to 7,3": the area of a grid.</summary>
    public string? BallArea { get; init; }

    /// <summary>"2 m/s,3 m/s".</summary>
    public string? Speeds { get; init; }

    /// <summary>"-1/8 tip,0,1/8 tip".</summary>
    public string? Tips { get; init; }

    /// <summary>"1 diamond": from the cue ball's centre to the object ball's.</summary>
    public string? Distance { get; init; }

    /// <summary>One of <see cref="ChartWords.Heights"/>.</summary>
    public string? Height { get; init; }

    /// <summary>One of the words of <see cref="Longrail.Physics.Shots.Readings.DiamondNumbers"/>.</summary>
    public string? Numbering { get; init; }

    /// <summary>One of <see cref="ChartWords.Units"/>.</summary>
    public string? Unit { get; init; }

    /// <summary>One of <see cref="ChartWords.Measures"/>: then a map is asked for.</summary>
    public string? Map { get; init; }

    /// <summary>"2,2": the cue ball of a map.</summary>
    public string? Cue { get; init; }

    /// <summary>The player of a map of odds.</summary>
    public Player? Player { get; init; }

    /// <summary>Seed of the random strokes.</summary>
    public string? Seed { get; init; }

    /// <summary>Strokes at each place of a map of odds.</summary>
    public string? Shots { get; init; }
}
