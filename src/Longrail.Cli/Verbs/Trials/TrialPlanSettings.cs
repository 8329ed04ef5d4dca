using System.ComponentModel;
using System.Globalization;
using Longrail.Cli.Input;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;
using Longrail.Scenes.Units;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>The arguments of trial plan.</summary>
public sealed class TrialPlanSettings : SceneFileSettings
{
    private const double LongestReading = 0.5;

    /// <summary>What is varied, as typed.</summary>
    [CommandOption("--vary <FIELD=LEVELS>")]
    [Description("The field of the scene that differs between the conditions, and its levels with commas between them; "
        + "one level alone is compared with the scene as it stands")]
    public string? Vary { get; init; }

    /// <summary>What is held, as typed.</summary>
    [CommandOption("--hold <WHAT>")]
    [Description("stick (default): the cue keeps its line. path: the cue ball leaves along the same line")]
    public string Hold { get; init; } = "stick";

    /// <summary>The player, as typed, or null.</summary>
    [CommandOption("--player <NAME|FILE>")]
    [Description("Who plays: beginner, club (default), county, national, or a player file")]
    public string? Player { get; init; }

    /// <summary>The measure, as typed, or null.</summary>
    [CommandOption("--measure <WHAT>")]
    [Description("landing or made (default: what needs fewer shots)")]
    public string? Measure { get; init; }

    /// <summary>Whether no speeds are measured.</summary>
    [CommandOption("--no-speed")]
    [Description("The speed of the strokes cannot be measured, so it is not evened out")]
    public bool NoSpeed { get; init; }

    /// <summary>Reading error of a landing, as typed.</summary>
    [CommandOption("--reading <LENGTH>")]
    [Description("How well a landing is read, as one standard error (default: 10 mm)")]
    public string Reading { get; init; } = "10 mm";

    /// <summary>Reading error of a speed, as typed.</summary>
    [CommandOption("--speed-reading <PART>")]
    [Description("How well a speed is read, as one standard error (default: 3 %)")]
    public string SpeedReading { get; init; } = "3 %";

    /// <summary>The power, as typed.</summary>
    [CommandOption("--power <CHANCE>")]
    [Description("How often the expected difference shall be seen, from 0.5 (default: 0.8)")]
    public string Power { get; init; } = "0.8";

    /// <summary>The most shots.</summary>
    [CommandOption("--most <SHOTS>")]
    [Description("The most shots of each condition that you will play (default: 60)")]
    public int Most { get; init; } = 60;

    /// <summary>How many looks.</summary>
    [CommandOption("--looks <NUMBER>")]
    [Description("How many times you will look at the results, the end included, from 1 (default) to 10")]
    public int Looks { get; init; } = 1;

    /// <summary>The stopping rule, as typed.</summary>
    [CommandOption("--rule <RULE>")]
    [Description(
        "obrien-fleming (default): an early end needs a great difference. pocock: the same limit at each look")]
    public string Rule { get; init; } = "obrien-fleming";

    /// <summary>The order, as typed.</summary>
    [CommandOption("--order <ORDER>")]
    [Description("abba (default): there and back again, fewest changes. blocks: shuffled within short blocks")]
    public string Order { get; init; } = "abba";

    /// <summary>The seed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("The lot by which the order is drawn (default: 1)")]
    public int Seed { get; init; } = 1;

    /// <summary>Whether the plan is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the plan as JSON, for trial sheet and trial weigh")]
    public bool Json { get; init; }

    /// <summary>What is varied, read; only after <see cref="Validate"/>.</summary>
    public Variation Variation => VariationText.Read(Vary!, out _)!;

    /// <summary>What is held; only after <see cref="Validate"/>.</summary>
    public Hold Held => Hold == "path" ? Coaching.Contrasts.Hold.Path : Coaching.Contrasts.Hold.Stick;

    /// <summary>What is measured, or null; only after <see cref="Validate"/>.</summary>
    public TrialMeasure? MeasureAsked => Measure is null ? null : TrialWords.Measure(Measure);

    /// <summary>Metres; only after <see cref="Validate"/>.</summary>
    public double ReadingMetres => Quantity(Reading, QuantityKind.Length) ?? 0;

    /// <summary>A part; only after <see cref="Validate"/>.</summary>
    public double SpeedReadingPart => Quantity(SpeedReading, QuantityKind.Ratio) ?? 0;

    /// <summary>A chance; only after <see cref="Validate"/>.</summary>
    public double PowerAsked =>
        double.TryParse(Power, NumberStyles.Float, CultureInfo.InvariantCulture, out double power) ? power : 0;

    /// <summary>The stopping rule; only after <see cref="Validate"/>.</summary>
    public StoppingRule RuleAsked => Rule == "pocock" ? StoppingRule.Pocock : StoppingRule.OBrienFleming;

    /// <summary>The order; only after <see cref="Validate"/>.</summary>
    public TrialOrder OrderAsked => Order == "blocks" ? TrialOrder.Blocks : TrialOrder.Abba;

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Vary is null) return ValidationResult.Error($"--vary: nothing is varied; allowed: {VariationText.Form}");
        if (VariationText.Read(Vary, out string problem) is null) return ValidationResult.Error($"--vary: {problem}");
        if (!(Quantity(Reading, QuantityKind.Length) is > 0 and <= LongestReading))
            return ValidationResult.Error(
                $"--reading: \"{Reading}\"; allowed: a length with its unit, more than 0, up to 0.5 m");
        if (!(Quantity(SpeedReading, QuantityKind.Ratio) is >= 0 and <= 0.5))
            return ValidationResult.Error($"--speed-reading: \"{SpeedReading}\"; allowed: a part, from 0 to 50 %");
        if (!(PowerAsked is >= 0.5 and <= 0.999))
            return ValidationResult.Error($"--power: \"{Power}\"; allowed: a chance from 0.5 to 0.999");
        if (Most is < 2 or > 10_000)
            return ValidationResult.Error($"--most: {Most}; allowed: 2 to 10000");
        if (Looks is < 1 or > 10)
            return ValidationResult.Error($"--looks: {Looks}; allowed: 1 to 10");
        return Word("--hold", Hold, "stick", "path")
            ?? Word("--measure", Measure ?? "landing", "landing", "made")
            ?? Word("--rule", Rule, "obrien-fleming", "pocock")
            ?? Word("--order", Order, "abba", "blocks")
            ?? ValidationResult.Success();
    }

    private static double? Quantity(string text, QuantityKind kind) =>
        QuantityText.Parse(text, kind, out Quantity quantity) == QuantityTextProblem.None ? quantity.Value : null;

    private static ValidationResult? Word(string option, string word, params string[] allowed) => allowed.Contains(word)
        ? null
        : ValidationResult.Error($"{option}: \"{word}\"; allowed: {string.Join(", ", allowed)}");
}
