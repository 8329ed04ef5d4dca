using System.ComponentModel;
using Longrail.Drawing;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>The arguments of trial sheet.</summary>
public sealed class TrialSheetSettings : CommandSettings
{
    /// <summary>The plan, or "-".</summary>
    [CommandArgument(0, "<PLAN>")]
    [Description("The plan that trial plan --json wrote; - is standard input")]
    public string Plan { get; init; } = "";

    /// <summary>The sheet to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw the sheet to NAME, which ends in .pdf, .svg or .png; of the latter two a second page is NAME-2")]
    public string? Picture { get; init; }

    /// <summary>The paper, as typed.</summary>
    [CommandOption("--paper <SIZE>")]
    [Description("a4 (default) or letter")]
    public string Paper { get; init; } = "a4";

    /// <summary>The table to fill in, or null.</summary>
    [CommandOption("--results <NAME>")]
    [Description("Write a table to fill in to NAME, which ends in .csv; a file that is there already is left alone")]
    public string? Results { get; init; }

    /// <summary>The paper; only after <see cref="Validate"/>.</summary>
    public Paper PaperAsked => Paper == "letter" ? Drawing.Paper.Letter : Drawing.Paper.A4;

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Paper is not ("a4" or "letter"))
            return ValidationResult.Error($"--paper: \"{Paper}\"; allowed: a4, letter");
        return Results is null || Results.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            ? ValidationResult.Success()
            : ValidationResult.Error($"--results: \"{Results}\"; allowed: a name that ends in .csv");
    }
}
