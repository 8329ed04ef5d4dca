using System.Text.Json;

namespace Longrail.Scenes.Trials;

/// <summary>A trial's plan as its file has it, format "trial-plan/1". Metres, m/s and radians.</summary>
public sealed record TrialPlanFile
{
    /// <summary>The format of the file.</summary>
    public const string Format = "trial-plan/1";

    /// <summary>The format as the file names it.</summary>
    public required string Longrail { get; init; }

    /// <summary>The title; empty if the scene has none.</summary>
    public required string Title { get; init; }

    /// <summary>The field that differs.</summary>
    public required string Varied { get; init; }

    /// <summary>"stick" or "path".</summary>
    public required string Hold { get; init; }

    /// <summary>"landing" or "made".</summary>
    public required string Measure { get; init; }

    /// <summary>Whether the speed is measured and evened out.</summary>
    public required bool UsesSpeed { get; init; }

    /// <summary>Shots of each condition; 0 where no affordable number will do.</summary>
    public required int Shots { get; init; }

    /// <summary>Shots of each condition at each look.</summary>
    public required IReadOnlyList<int> Looks { get; init; }

    /// <summary>"obrien-fleming" or "pocock".</summary>
    public required string Rule { get; init; }

    /// <summary>"abba" or "blocks".</summary>
    public required string Order { get; init; }

    /// <summary>Seed of the order.</summary>
    public required int Seed { get; init; }

    /// <summary>How often the expected difference shall be seen.</summary>
    public required double Power { get; init; }

    /// <summary>How often one is seen that is not there.</summary>
    public required double Level { get; init; }

    /// <summary>The most shots of each condition that anyone will play.</summary>
    public required int MostShots { get; init; }

    /// <summary>The ball whose bank is measured.</summary>
    public required string Ball { get; init; }

    /// <summary>The cushion along which a landing is measured, or null.</summary>
    public required string? Target { get; init; }

    /// <summary>Length of a diamond along it, or null.</summary>
    public required double? Diamond { get; init; }

    /// <summary>The pocket that is played for, or null.</summary>
    public required string? Pocket { get; init; }

    /// <summary>Standard error of reading a landing, metres.</summary>
    public required double LandingReading { get; init; }

    /// <summary>Standard error of reading a speed, as a part of it.</summary>
    public required double SpeedReading { get; init; }

    /// <summary>Who plays.</summary>
    public required TrialPlanPlayer Player { get; init; }

    /// <summary>The conditions.</summary>
    public required IReadOnlyList<TrialPlanCondition> Conditions { get; init; }

    /// <summary>What each comparison needs.</summary>
    public required IReadOnlyList<TrialPlanNeed> Needs { get; init; }

    /// <summary>What else must be said.</summary>
    public required IReadOnlyList<string> Advice { get; init; }

    /// <summary>The shot, as a scene file has it.</summary>
    public required JsonElement Scene { get; init; }
}
