using System.ComponentModel;
using System.Globalization;
using Longrail.Cli.Input;
using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Scenes.Compiling;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>The arguments of the verb chart.</summary>
public sealed class ChartSettings : CommandSettings
{
    private const string DateForm = "yyyy-MM-dd";

    /// <summary>The scene file for the equipment, "-", or null.</summary>
    [CommandArgument(0, "[FILE]")]
    [Description("A scene file: its table, cloth, cushions, balls and cue are used; - is standard input")]
    public string? File { get; init; }

    /// <summary>The bank, as typed.</summary>
    [CommandOption("--bank <KIND>")]
    [Description("cross-side, cross-corner, long-rail, or kick (the cue ball alone)")]
    public string? Bank { get; init; }

    /// <summary>A table preset, as typed.</summary>
    [CommandOption("--table <PRESET>")]
    [Description(
        "A table without a scene: pool-9ft (default), pool-8ft, pool-7ft, snooker-12ft; carom-10ft for a kick")]
    public string? Table { get; init; }

    /// <summary>The pocket, as typed.</summary>
    [CommandOption("--pocket <NAME>")]
    [Description("The pocket (default: on the left)")]
    public string? Pocket { get; init; }

    /// <summary>The cushion, as typed.</summary>
    [CommandOption("--off <CUSHION>")]
    [Description("The cushion: head, foot, left, right (default: the one that the pocket asks for; a kick: left)")]
    public string? Off { get; init; }

    /// <summary>A kick's target, as typed.</summary>
    [CommandOption("--target <PLACE>")]
    [Description("Where a kick goes: ALONG,ACROSS in diamonds, or a ball of the scene (default: the foot spot)")]
    public string? Target { get; init; }

    /// <summary>A line of places, as typed.</summary>
    [CommandOption("--line <PLACES>")]
    [Description("Where the ball lies: \"ALONG,ACROSS to ALONG,ACROSS\" in diamonds, at every half diamond")]
    public string? Line { get; init; }

    /// <summary>How many places the line has, as typed.</summary>
    [CommandOption("--places <N>")]
    [Description("So many places on the line instead")]
    public string? Places { get; init; }

    /// <summary>A grid of places, as typed.</summary>
    [CommandOption("--grid <NxM>")]
    [Description("Places along x places across, instead of a line (a map: 33x17)")]
    public string? Grid { get; init; }

    /// <summary>The area of the grid, as typed.</summary>
    [CommandOption("--ball-area <PLACES>")]
    [Description("The area of the grid: \"ALONG,ACROSS to ALONG,ACROSS\" (a map: the whole table)")]
    public string? BallArea { get; init; }

    /// <summary>The speeds, as typed.</summary>
    [CommandOption("--speeds <SPEEDS>")]
    [Description("Speeds of the cue ball with commas between them (a map shows the best of them at each place)")]
    public string? Speeds { get; init; }

    /// <summary>The tips, as typed.</summary>
    [CommandOption("--tips <TIPS>")]
    [Description("Places of the tip with commas between them (default: \"-1/8 tip,0,1/8 tip\"; a map: 0)")]
    public string? Tips { get; init; }

    /// <summary>The height of the tip, as typed.</summary>
    [CommandOption("--height <WHAT>")]
    [Description("stun (default of a chart), follow (of a kick), centre (of a map)")]
    public string? Height { get; init; }

    /// <summary>The distance, as typed.</summary>
    [CommandOption("--distance <LENGTH>")]
    [Description("From the cue ball's centre to the object ball's (default: 1 diamond)")]
    public string? Distance { get; init; }

    /// <summary>The numbering, as typed.</summary>
    [CommandOption("--numbering <WHAT>")]
    [Description("How the cushion is numbered: nose (default), sight (through the sights), tens")]
    public string? Numbering { get; init; }

    /// <summary>The unit, as typed.</summary>
    [CommandOption("--unit <UNIT>")]
    [Description("Corrections in diamond (default), mm or in")]
    public string? Unit { get; init; }

    /// <summary>What a map shows, as typed.</summary>
    [CommandOption("--map <WHAT>")]
    [Description("A map of the table instead: odds (a player's chance), or leeway (how far the aim may be off)")]
    public string? Map { get; init; }

    /// <summary>The cue ball of a map, as typed.</summary>
    [CommandOption("--cue <PLACE>")]
    [Description(
        "Where the cue ball of a map stands (default: as in the scene, else on the far side from the cushion)")]
    public string? Cue { get; init; }

    /// <summary>The player of a map, as typed.</summary>
    [CommandOption("--player <WHO>")]
    [Description("Whose odds: beginner, club (default), county, national, or a player file")]
    public string? Player { get; init; }

    /// <summary>The seed, as typed.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of a map's random strokes (default: 1); same seed, same map")]
    public string? Seed { get; init; }

    /// <summary>The strokes a place, as typed.</summary>
    [CommandOption("--shots <N>")]
    [Description("Strokes of the player at each place (default: 400)")]
    public string? Shots { get; init; }

    /// <summary>Whether the chart is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write it as JSON instead of a table for people")]
    public bool Json { get; init; }

    /// <summary>Whether the chart is written as comma-separated values.</summary>
    [CommandOption("--csv")]
    [Description("Write it as comma-separated values instead")]
    public bool Csv { get; init; }

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw it to NAME, which ends in .svg, .png or .pdf: one A4 page")]
    public string? Picture { get; init; }

    /// <summary>The date for the picture, as typed.</summary>
    [CommandOption("--date <DATE>")]
    [Description("A date to print on the picture, as 2026-11-25 (default: none)")]
    public string? Date { get; init; }

    /// <summary>The date; only after <see cref="Validate"/>.</summary>
    public DateOnly? DateAsked =>
        Date is null ? null : DateOnly.ParseExact(Date, DateForm, CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        if (Json && Csv)
            return ValidationResult.Error("--json and --csv: one form at a time");
        if (Date is not null
            && !DateOnly.TryParseExact(Date, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            return ValidationResult.Error($"--date: \"{Date}\"; allowed: year-month-day, as 2026-11-25");
        return ValidationResult.Success();
    }

    /// <summary>The question.</summary>
    /// <param name="scene">The scene for the equipment, or null.</param>
    /// <param name="player">Whose odds, or null.</param>
    internal ChartQuestion Question(ReadyScene? scene, Player? player) => new()
    {
        Scene = scene,
        Table = Typed(Table),
        Bank = Typed(Bank),
        Pocket = Typed(Pocket),
        Off = Typed(Off),
        Target = Typed(Target),
        Line = Typed(Line),
        Places = Typed(Places),
        Grid = Typed(Grid),
        BallArea = Typed(BallArea),
        Speeds = Typed(Speeds),
        Tips = Typed(Tips),
        Height = Typed(Height),
        Distance = Typed(Distance),
        Numbering = Typed(Numbering),
        Unit = Typed(Unit),
        Map = Typed(Map),
        Cue = Typed(Cue),
        Player = player,
        Seed = Typed(Seed),
        Shots = Typed(Shots),
    };

    private static string? Typed(string? value) => value is null ? null : SceneInput.Undisguise(value);
}
