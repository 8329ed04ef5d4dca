using System.ComponentModel;
using System.Globalization;
using Longrail.Cli.Input;
using Longrail.Coaching.Effects;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>The arguments of the verb effects.</summary>
public sealed class EffectsSettings : SceneFileSettings
{
    /// <summary>The measured ball, or null.</summary>
    [CommandOption("--ball <ID>")]
    [Description("The ball that is measured (default: the first ball hit; the cue ball if it comes to a cushion "
        + "first)")]
    public string? Ball { get; init; }

    /// <summary>How many cushions count, as typed, or null.</summary>
    [CommandOption("--cushions <N>")]
    [Description("How many of its cushions count, 1 to 3 (default: as many as the aim names, all on its way "
        + "into a pocket or of a kick to a ball, else 1)")]
    public string? Cushions { get; init; }

    /// <summary>The unit, as typed.</summary>
    [CommandOption("--unit <UNIT>")]
    [Description("The unit of the sentence and the picture: diamonds (default), mm, or half-openings of the pocket")]
    public string Unit { get; init; } = "diamonds";

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw the budget to NAME, which ends in .svg, .png or .pdf")]
    public string? Picture { get; init; }

    /// <summary>Whether the budget is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the budget as JSON instead of a table for people")]
    public bool Json { get; init; }

    /// <summary>The question; only after <see cref="Validate"/>.</summary>
    public EffectsOptions Options => new(
        Ball, Cushions is null ? null : int.Parse(Cushions, CultureInfo.InvariantCulture));

    /// <summary>The unit; only after <see cref="Validate"/>.</summary>
    public EffectUnit ShownUnit => Unit switch
    {
        "mm" => EffectUnit.Millimetres,
        "half-openings" => EffectUnit.HalfOpenings,
        _ => EffectUnit.Diamonds,
    };

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Cushions is not (null or "1" or "2" or "3"))
            return ValidationResult.Error($"--cushions: \"{Cushions}\"; allowed: 1, 2, 3");
        return Unit is "diamonds" or "mm" or "half-openings"
            ? ValidationResult.Success()
            : ValidationResult.Error($"--unit: \"{Unit}\"; allowed: diamonds, mm, half-openings");
    }
}
