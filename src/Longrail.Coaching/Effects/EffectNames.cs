using System.Globalization;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Effects;

/// <summary>The words for causes and amounts.</summary>
public static class EffectNames
{
    /// <summary>The cause in the trade's words, as a row of a table.</summary>
    /// <param name="kind">The cause.</param>
    /// <param name="budget">The budget that it stands in.</param>
    public static string Of(EffectKind kind, EffectBudget budget) => kind switch
    {
        EffectKind.SquirtAndSwerve => "squirt and swerve",
        EffectKind.CutThrow => "throw by the cut",
        EffectKind.SpinThrow => "throw by side",
        EffectKind.Side => budget.Striker is null ? "side" : "side handed over",
        EffectKind.Roll => "roll at the cushion",
        EffectKind.Curve => "curve after it",
        EffectKind.Rubber => "give of the rubber",
        EffectKind.Speed => "speed along the way",
        _ => "ball condition" + Condition(budget),
    };

    /// <summary>The cause as files write it.</summary>
    public static string Word(EffectKind kind) => kind switch
    {
        EffectKind.SquirtAndSwerve => "squirt-and-swerve",
        EffectKind.CutThrow => "cut-throw",
        EffectKind.SpinThrow => "spin-throw",
        EffectKind.Side => "side",
        EffectKind.Roll => "roll",
        EffectKind.Curve => "curve",
        EffectKind.Rubber => "rubber",
        EffectKind.Speed => "speed",
        _ => "ball-condition",
    };

    /// <summary>What switching the cause off means, in one sentence.</summary>
    public static string Meaning(EffectKind kind) => kind switch
    {
        EffectKind.SquirtAndSwerve => "Off: the ball leaves along the stick, and its way does not bend.",
        EffectKind.CutThrow => "Off: the cut does not turn the struck ball from the line of centres.",
        EffectKind.SpinThrow => "Off: the striker's side does not turn the struck ball from the line of centres.",
        EffectKind.Side => "Off: the ball sets out without side.",
        EffectKind.Roll => "Off: the ball slides into each cushion without roll, follow or draw.",
        EffectKind.Curve => "Off: after a cushion the ball goes straight on.",
        EffectKind.Rubber => "Off: a ball without spin leaves as it came in, and where it came in.",
        EffectKind.Speed => "Off: the ball comes to each cushion as fast as it set out for it.",
        _ => "Off: the balls rub like clean ones.",
    };

    /// <summary>The name of a unit, for a number that is not one.</summary>
    public static string Of(EffectUnit unit) => unit switch
    {
        EffectUnit.Diamonds => "diamonds",
        EffectUnit.Millimetres => "mm",
        _ => "half openings",
    };

    // The name of the balls' condition, if it has one.
    private static string Condition(EffectBudget budget)
    {
        BallFriction friction = budget.Trace.Setup.Equipment.BallSet.Friction;
        return EquipmentPresets.BallConditions.FirstOrDefault(c => c.Friction == friction) is { } named
            ? $" ({named.Name})"
            : "";
    }

    /// <summary>Decimals with which amounts are shown in a unit.</summary>
    internal static int Decimals(EffectUnit unit) => unit == EffectUnit.Millimetres ? 1 : 2;

    /// <summary>An amount without its sign: "0.17".</summary>
    public static string Size(double amount, EffectUnit unit) =>
        Math.Abs(amount).ToString(Decimals(unit) == 1 ? "0.0" : "0.00", CultureInfo.InvariantCulture);

    /// <summary>An amount with its sign, or "0" if it shows as nothing: "+0.17".</summary>
    public static string WithSign(double amount, EffectUnit unit) => Math.Round(amount, Decimals(unit)) switch
    {
        > 0 => "+" + Size(amount, unit),
        < 0 => "-" + Size(amount, unit),
        _ => "0",
    };
}
