using System.ComponentModel;
using Longrail.Cli.Input;
using Longrail.Coaching.Contrasts;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>The arguments of the verb contrast.</summary>
public sealed class ContrastSettings : SceneFileSettings
{
    /// <summary>What is varied, as typed.</summary>
    [CommandOption("--vary <FIELD=LEVELS>")]
    [Description("The field of the scene that changes, and its levels with commas between them. "
        + "Given twice, two things change, and every table and picture says so")]
    public string[] Vary { get; init; } = [];

    /// <summary>What is held, as typed.</summary>
    [CommandOption("--hold <WHAT>")]
    [Description("stick (default): the cue keeps its line. path: re-aimed so that the cue ball leaves along "
        + "the same line, which takes squirt out of the comparison")]
    public string Hold { get; init; } = "stick";

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw all variants over the base to NAME, which ends in .svg, .png or .pdf")]
    public string? Picture { get; init; }

    /// <summary>Whether the comparison is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the comparison as JSON instead of a table for people")]
    public bool Json { get; init; }

    /// <summary>What is varied, read; only after <see cref="Validate"/>.</summary>
    public IReadOnlyList<Variation> Variations => [.. Vary.Select(text => VariationText.Read(text, out _)!)];

    /// <summary>What is held; only after <see cref="Validate"/>.</summary>
    public Hold Held => Hold == "path" ? Coaching.Contrasts.Hold.Path : Coaching.Contrasts.Hold.Stick;

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Vary.Length is < 1 or > 2)
        {
            string given = Vary.Length == 0 ? "nothing is varied" : $"{Vary.Length} fields are varied";
            return ValidationResult.Error(
                $"--vary: {given}; allowed: once, or twice for two things at a time; {VariationText.Form}");
        }

        foreach (string text in Vary)
        {
            if (VariationText.Read(text, out string problem) is null)
                return ValidationResult.Error($"--vary: {problem}");
        }

        return Hold is "stick" or "path"
            ? ValidationResult.Success()
            : ValidationResult.Error($"--hold: \"{Hold}\"; allowed: stick, path");
    }
}
