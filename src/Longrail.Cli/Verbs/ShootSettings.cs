using System.ComponentModel;
using System.Globalization;
using Longrail.Cli.Input;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>The arguments of the verb shoot.</summary>
public sealed class ShootSettings : SceneFileSettings
{
    private const double LongestTime = 3600.0;

    /// <summary>Whether the outcome is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the outcome as JSON instead of a table for people")]
    public bool Json { get; init; }

    /// <summary>Whether FILE holds one scene a line.</summary>
    [CommandOption("--lines")]
    [Description("FILE holds one scene a line; write one outcome a line, in the same order, using all processor cores. "
        + "A line that cannot be played is answered by an error object, and the rest is played")]
    public bool Lines { get; init; }

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw the shot to NAME, which ends in .svg, .png or .pdf")]
    public string? Picture { get; init; }

    /// <summary>When to stop following the shot, as typed, or null.</summary>
    [CommandOption("--until <SECONDS>")]
    [Description("Follow the shot for so many seconds only (default: until all is at rest, at most 120)")]
    public string? Until { get; init; }

    /// <summary>When to stop following the shot, seconds, or null.</summary>
    public double? UntilSeconds =>
        double.TryParse(Until, NumberStyles.Float, CultureInfo.InvariantCulture, out double seconds) ? seconds : null;

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Until is not null && !(UntilSeconds is > 0 and <= LongestTime))
        {
            return ValidationResult.Error(
                $"--until: \"{Until}\"; allowed: a number of seconds, more than 0, up to {LongestTime}");
        }

        if (Lines && Picture is not null)
            return ValidationResult.Error("--picture draws one shot; it cannot go with --lines");
        return ValidationResult.Success();
    }
}
