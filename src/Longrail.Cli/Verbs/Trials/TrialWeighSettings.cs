using System.ComponentModel;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>The arguments of trial weigh.</summary>
public sealed class TrialWeighSettings : CommandSettings
{
    /// <summary>The results, or "-".</summary>
    [CommandArgument(0, "<RESULTS>")]
    [Description("The table of results (CSV); - is standard input")]
    public string Results { get; init; } = "";

    /// <summary>The plan, or null.</summary>
    [CommandOption("--plan <PLAN>")]
    [Description("The plan that trial plan --json wrote. Without it there are estimates and no verdict")]
    public string? Plan { get; init; }

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw the results to NAME, which ends in .svg, .png or .pdf")]
    public string? Picture { get; init; }

    /// <summary>Whether the result is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the result as JSON instead of text for people")]
    public bool Json { get; init; }
}
