using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Scenes;

namespace Longrail.Coaching.Trials;

/// <summary>A question for a trial: which conditions, who plays, how well one can read, how sure one wants to
/// be.</summary>
public sealed record TrialRequest
{
    /// <summary>The shot.</summary>
    public required Scene Scene { get; init; }

    /// <summary>The one field that differs between the conditions. One level alone is compared with the scene as it
    /// stands.</summary>
    public required Variation Variation { get; init; }

    /// <summary>What stays the same from condition to condition.</summary>
    public Hold Hold { get; init; } = Hold.Stick;

    /// <summary>Who plays.</summary>
    public Player Player { get; init; } = PlayerPresets.Default;

    /// <summary>What is measured; null to take what needs fewest shots.</summary>
    public TrialMeasure? Measure { get; init; }

    /// <summary>Whether the speed of each stroke is measured too and evened out; not where the speed is what
    /// differs.</summary>
    public bool UsesSpeed { get; init; } = true;

    /// <summary>Standard error of reading off a landing, metres, positive.</summary>
    public double LandingReading { get; init; } = 0.01;

    /// <summary>Standard error of reading off a speed, as a part of it, not negative.</summary>
    public double SpeedReading { get; init; } = 0.03;

    /// <summary>How often the difference shall be seen if it is as the physics says, between 0.5 and 1.</summary>
    public double Power { get; init; } = 0.8;

    /// <summary>How often a difference is seen that is not there, between 0 and 0.5.</summary>
    public double Level { get; init; } = 0.05;

    /// <summary>The most shots of each condition that anyone will play, positive.</summary>
    public int MostShots { get; init; } = 60;

    /// <summary>How many times the results are looked at, the end included; from 1 to 10.</summary>
    public int Looks { get; init; } = 1;

    /// <summary>How the false alarms are shared out over the looks.</summary>
    public StoppingRule Rule { get; init; } = StoppingRule.OBrienFleming;

    /// <summary>In which order the conditions are played.</summary>
    public TrialOrder Order { get; init; } = TrialOrder.Abba;

    /// <summary>Seed of the order and of the simulated strokes.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many strokes of each condition are played by the computer, from 100 on.</summary>
    public int Strokes { get; init; } = 2000;
}
