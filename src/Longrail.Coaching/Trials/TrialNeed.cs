using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>How many shots one comparison needs, measured in one way.</summary>
/// <param name="Condition">The condition that is held against the first.</param>
/// <param name="Measure">What is measured.</param>
/// <param name="UsesSpeed">Whether the speed is evened out.</param>
/// <param name="Effect">The difference that the physics expects, condition minus first: metres, or chance.</param>
/// <param name="Spread">Standard deviation within a condition, metres, after the speed has been evened out where it is;
/// null for makes.</param>
/// <param name="Shots">Shots of each condition in a trial with one look; <see cref="ShotsNeeded.Most"/> stands for that
/// and more.</param>
/// <param name="SeenWithMost">The smallest difference that the most shots allowed would see with the power asked for;
/// null for makes.</param>
public sealed record TrialNeed(
    string Condition, TrialMeasure Measure, bool UsesSpeed, double Effect, double? Spread, int Shots,
    double? SeenWithMost);
