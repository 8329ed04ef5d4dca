using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Cli.Ways;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Drawing;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>Finds every way to play a ball.</summary>
internal sealed class WaysCommand : Command<WaysSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description =
        "Every way to play a ball: aim, speed, tip, how far each may be off, and the odds for a player";

    private static readonly string[] _options =
        ["ball", "next", "rails", "kick-rails", "pocket", "player", "budget", "threads"];

    /// <inheritdoc/>
    public override int Execute(CommandContext context, WaysSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (RefusedPlace(settings) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: {refusal}");
            return ExitCode.BadInput;
        }

        if (PlayerInput.Read(settings.Player, streams) is not { } player)
            return ExitCode.BadInput;
        ReadyScene? scene = SceneInput.ReadLayout(settings.File, streams, out int exitCode);
        if (scene is null)
            return exitCode;
        WaysAnswer answer = Answer(Request(settings, scene, player), streams);
        if (answer.Errors.Count > 0)
        {
            SceneInput.PrintErrors([.. answer.Errors.Select(Named)], null, streams.Error);
            return ExitCode.BadInput;
        }

        int written = Write(answer, settings, streams);
        return streams.Interrupted.IsCancellationRequested ? ExitCode.Interrupted : written;
    }

    private static string? RefusedPlace(WaysSettings settings)
    {
        if (settings.Picture is { } picture && PictureOutput.Refusal(picture) is { } wrong)
            return $"--picture: {wrong}";
        return settings.Save is { } folder && WaysFolder.Prepare(folder) is { } reason ? $"--save: {reason}" : null;
    }

    private static WaysRequest Request(WaysSettings settings, ReadyScene scene, Player player) => new()
    {
        Scene = scene,
        Ball = settings.Ball!,
        NextBall = settings.Next,
        FewestRails = settings.RailsAsked.Fewest,
        MostRails = settings.RailsAsked.Most,
        MostKickRails = settings.KickRailsAsked,
        Pocket = settings.PocketAsked,
        Player = player,
        Seed = settings.SeedAsked,
        Order = settings.OrderAsked,
        TimeBudget = settings.BudgetAsked,
        Threads = settings.ThreadsAsked,
    };

    private static WaysAnswer Answer(WaysRequest request, ProgramStreams streams)
    {
        if (!streams.ErrorIsTerminal)
            return WaysRunner.Run(request, null, streams.Interrupted);
        var terminal = new WaysTerminal();
        Task<WaysAnswer> run = Task.Run(() => WaysRunner.Run(request, terminal, streams.Interrupted));
        terminal.Follow(streams.Error, run);
        return run.GetAwaiter().GetResult();
    }

    private static int Write(WaysAnswer answer, WaysSettings settings, ProgramStreams streams)
    {
        // The list comes first: if anything else fails, it is there.
        streams.Output.Write(
            settings.Json
                ? WaysWriter.ToUtf8(answer)
                : Encoding.UTF8.GetBytes(WaysText.Of(answer, settings.TopAsked, settings.Details ? int.MaxValue : 1)));
        streams.Output.Flush();
        if (settings.Save is { } folder && WaysFolder.Write(answer, folder) is { } notSaved)
        {
            streams.Error.WriteLine($"longrail: --save: {notSaved}");
            return ExitCode.Failed;
        }

        if (settings.Picture is { } picture
            && PictureOutput.Write(WaysPicture.Draw(answer), picture) is { } notDrawn)
        {
            streams.Error.WriteLine($"longrail: --picture: {notDrawn}");
            return ExitCode.Failed;
        }

        return ExitCode.Done;
    }

    // What belongs to an option is told under its name.
    private static SceneError Named(SceneError error) =>
        _options.Contains(error.Path) ? error with { Path = "--" + error.Path } : error;
}
