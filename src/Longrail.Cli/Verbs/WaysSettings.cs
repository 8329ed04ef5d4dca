using System.ComponentModel;
using System.Globalization;
using Longrail.Cli.Input;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>The arguments of the verb ways.</summary>
public sealed class WaysSettings : SceneFileSettings
{
    private const int MostKickRails = 2;
    private const double LongestBudget = 3600;

    /// <summary>The ball to make.</summary>
    [CommandOption("--ball <BALL>")]
    [Description("The ball to make")]
    public string? Ball { get; init; }

    /// <summary>The ball to play next, or null.</summary>
    [CommandOption("--next <BALL>")]
    [Description("The ball to play after it: ways are then ranked by the chance of both")]
    public string? Next { get; init; }

    /// <summary>Cushions of the object ball, as typed.</summary>
    [CommandOption("--rails <RANGE>")]
    [Description("Cushions of the ball: a number from 0 to 3, or a range (default: 0..2)")]
    public string Rails { get; init; } = "0..2";

    /// <summary>Most cushions of the cue ball, as typed.</summary>
    [CommandOption("--kick-rails <NUMBER>")]
    [Description("Most cushions of the cue ball before it meets the ball, from 0 to 2 (default: 2)")]
    public string KickRails { get; init; } = "2";

    /// <summary>The only pocket, as typed, or null.</summary>
    [CommandOption("--pocket <POCKET>")]
    [Description("Only into this pocket: foot-left, foot-right, left-side, right-side, head-left or head-right")]
    public string? Pocket { get; init; }

    /// <summary>The player, as typed, or null.</summary>
    [CommandOption("--player <NAME|FILE>")]
    [Description("Whose errors the odds are for: beginner, club (default), county, national, or a player file")]
    public string? Player { get; init; }

    /// <summary>The order, as typed.</summary>
    [CommandOption("--order <ORDER>")]
    [Description("plan (default), odds, leeway, kiss, speed or rails")]
    public string Order { get; init; } = "plan";

    /// <summary>The seed, as typed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("Seed of the random strokes: the same seed gives the same answer (default: 1)")]
    public string Seed { get; init; } = "1";

    /// <summary>Number of threads, as typed, or null.</summary>
    [CommandOption("--threads <NUMBER>")]
    [Description("Processor cores to use (default: all); the answer does not depend on it")]
    public string? Threads { get; init; }

    /// <summary>The time budget, as typed, or null.</summary>
    [CommandOption("--budget <TIME>")]
    [Description("Stop after so long with what is found, as \"2 s\"")]
    public string? Budget { get; init; }

    /// <summary>How many ways are listed, as typed.</summary>
    [CommandOption("--top <NUMBER>")]
    [Description("List so many of the ways, from the best on (default: 10); JSON has all")]
    public string Top { get; init; } = "10";

    /// <summary>Whether every listed way is told in full.</summary>
    [CommandOption("--details")]
    [Description("Tell how every listed way is played and how far it may be off, not only the first")]
    public bool Details { get; init; }

    /// <summary>Whether the answer is written as JSON.</summary>
    [CommandOption("--json")]
    [Description("Write the answer as JSON instead of a table for people")]
    public bool Json { get; init; }

    /// <summary>The picture to draw, or null.</summary>
    [CommandOption("--picture <NAME>")]
    [Description("Draw the ways to NAME, which ends in .svg, .png or .pdf")]
    public string? Picture { get; init; }

    /// <summary>The folder for the ways as scenes, or null.</summary>
    [CommandOption("--save <FOLDER>")]
    [Description("Write each way as a scene, which shoot plays, into FOLDER")]
    public string? Save { get; init; }

    /// <summary>Cushions of the object ball; only after <see cref="Validate"/>.</summary>
    public RailRange RailsAsked => RailRange.Read(Rails)!.Value;

    /// <summary>Most cushions of the cue ball; only after <see cref="Validate"/>.</summary>
    public int KickRailsAsked => Whole(KickRails, 0, MostKickRails)!.Value;

    /// <summary>The pocket; only after <see cref="Validate"/>.</summary>
    public PocketName? PocketAsked => Pocket is null ? null : TableWords.Pocket(Pocket);

    /// <summary>The order; only after <see cref="Validate"/>.</summary>
    public WaysOrder OrderAsked => WaysTerms.Order(Order)!.Value;

    /// <summary>The seed; only after <see cref="Validate"/>.</summary>
    public ulong SeedAsked => SeedOf(Seed)!.Value;

    /// <summary>Number of threads; only after <see cref="Validate"/>.</summary>
    public int ThreadsAsked => Threads is null ? Environment.ProcessorCount : Whole(Threads, 1, int.MaxValue)!.Value;

    /// <summary>How many ways are listed; only after <see cref="Validate"/>.</summary>
    public int TopAsked => Whole(Top, 1, int.MaxValue)!.Value;

    /// <summary>The time budget; only after <see cref="Validate"/>.</summary>
    public TimeSpan? BudgetAsked => Budget is null ? null : TimeSpan.FromSeconds(Seconds(Budget)!.Value);

    /// <inheritdoc/>
    public override ValidationResult Validate()
    {
        string? problem =
            string.IsNullOrWhiteSpace(Ball) ? "--ball: no ball is named; allowed: the id of a ball, as in --ball 9"
            : RailRange.Read(Rails) is null ? $"--rails: \"{Rails}\"; allowed: {RailRange.Form}"
            : Whole(KickRails, 0, MostKickRails) is null
                ? $"--kick-rails: \"{KickRails}\"; allowed: a number from 0 to {MostKickRails}"
            : Pocket is not null && !TableWords.Pockets.Contains(Pocket)
                ? Unknown("--pocket", Pocket, TableWords.Pockets)
            : WaysTerms.Order(Order) is null ? Unknown("--order", Order, WaysTerms.Orders)
            : SeedOf(Seed) is null ? $"--seed: \"{Seed}\"; allowed: a whole number, 0 or more"
            : Threads is not null && Whole(Threads, 1, int.MaxValue) is null
                ? $"--threads: \"{Threads}\"; allowed: a number, 1 or more"
            : Whole(Top, 1, int.MaxValue) is null ? $"--top: \"{Top}\"; allowed: a number, 1 or more"
            : Budget is not null && Seconds(Budget) is not (> 0 and <= LongestBudget)
                ? $"--budget: \"{Budget}\"; allowed: a time as \"2 s\", more than 0, up to {LongestBudget} s"
            : null;
        return problem is null ? ValidationResult.Success() : ValidationResult.Error(problem);
    }

    private static string Unknown(string option, string word, IReadOnlyList<string> words)
    {
        string near = NearestWord.Of(word, words) is { } nearest ? $"; did you mean \"{nearest}\"?" : "";
        return $"{option}: \"{word}\"; allowed: {string.Join(", ", words)}{near}";
    }

    private static int? Whole(string text, int least, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        && number >= least && number <= most
            ? number
            : null;

    private static ulong? SeedOf(string text) =>
        ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out ulong seed) ? seed : null;

    // A bare number is in seconds, as everywhere.
    private static double? Seconds(string text)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double seconds))
            return seconds;
        return QuantityText.Parse(text, QuantityKind.Time, out Quantity time) == QuantityTextProblem.None
            ? time.Value
            : null;
    }
}
