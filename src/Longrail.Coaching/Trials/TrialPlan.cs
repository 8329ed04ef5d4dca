using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;
using Longrail.Scenes;

namespace Longrail.Coaching.Trials;

/// <summary>A trial as it is fixed before the first shot.</summary>
public sealed record TrialPlan
{
    /// <summary>The shot; its title is the trial's.</summary>
    public required Scene Scene { get; init; }

    /// <summary>The field that differs.</summary>
    public required string Path { get; init; }

    /// <summary>What stays the same.</summary>
    public required Hold Hold { get; init; }

    /// <summary>The conditions in the order of their letters; two or more. The others are held against the
    /// first.</summary>
    public required IReadOnlyList<TrialCondition> Conditions { get; init; }

    /// <summary>Name of the ball whose bank is measured.</summary>
    public required string Ball { get; init; }

    /// <summary>The cushion along which a landing is measured; null where none can be.</summary>
    public required CushionName? Target { get; init; }

    /// <summary>Length of a diamond along that cushion, metres; null with <see cref="Target"/>.</summary>
    public required double? Diamond { get; init; }

    /// <summary>The pocket that is played for; null for none.</summary>
    public required PocketName? Pocket { get; init; }

    /// <summary>Who plays.</summary>
    public required Player Player { get; init; }

    /// <summary>Standard error of reading a landing, metres.</summary>
    public required double LandingReading { get; init; }

    /// <summary>Standard error of reading a speed, as a part of it.</summary>
    public required double SpeedReading { get; init; }

    /// <summary>How often the expected difference shall be seen.</summary>
    public required double Power { get; init; }

    /// <summary>How often a difference is seen that is not there, over all looks and comparisons.</summary>
    public required double Level { get; init; }

    /// <summary>The most shots of each condition that anyone will play.</summary>
    public required int MostShots { get; init; }

    /// <summary>What each comparison needs, measured in each way.</summary>
    public required IReadOnlyList<TrialNeed> Needs { get; init; }

    /// <summary>What is measured.</summary>
    public required TrialMeasure Measure { get; init; }

    /// <summary>Whether the speed is measured too and evened out.</summary>
    public required bool UsesSpeed { get; init; }

    /// <summary>Shots of each condition at each look, rising; the last is all of them. Empty where no affordable number
    /// will do.</summary>
    public required IReadOnlyList<int> Looks { get; init; }

    /// <summary>How the false alarms are shared out over the looks.</summary>
    public required StoppingRule Rule { get; init; }

    /// <summary>In which order the conditions are played.</summary>
    public required TrialOrder Order { get; init; }

    /// <summary>Seed of the order.</summary>
    public required int Seed { get; init; }

    /// <summary>What else must be said, each a whole sentence; the most important first.</summary>
    public required IReadOnlyList<string> Advice { get; init; }

    /// <summary>Whether there is a number of shots that will do.</summary>
    public bool IsAffordable => Looks.Count > 0;

    /// <summary>Shots of each condition in all; 0 where no affordable number will do.</summary>
    public int Shots => IsAffordable ? Looks[^1] : 0;

    /// <summary>The title, or an empty text.</summary>
    public string Title => Scene.Title ?? "";

    /// <summary>How many comparisons with the first condition there are.</summary>
    public int Comparisons => Conditions.Count - 1;
}
