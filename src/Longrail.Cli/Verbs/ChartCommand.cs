using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Drawing;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>Computes a bank chart for a table, or a map of the table.</summary>
internal sealed class ChartCommand : Command<ChartSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description =
        "A bank chart for a table: how far beside the mirror point to aim; or a map of a player's odds";

    private static readonly TimeSpan _patience = TimeSpan.FromMilliseconds(300);

    /// <inheritdoc/>
    public override int Execute(CommandContext context, ChartSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (settings.Picture is { } wanted && PictureOutput.Refusal(wanted) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: --picture: {refusal}");
            return ExitCode.BadInput;
        }

        ReadyScene? scene = null;
        if (settings.File is { } file)
        {
            scene = SceneInput.ReadLayout(file, streams, out int exitCode);
            if (scene is null)
                return exitCode;
        }

        Player? player = null;
        if (settings.Map == ChartWords.Of(MapMeasure.Odds) || settings.Player is not null)
        {
            player = PlayerInput.Read(settings.Player, streams);
            if (player is null)
                return ExitCode.BadInput;
        }

        ChartReading reading = ChartReader.Read(settings.Question(scene, player));
        using var progress = new ProgressLine(streams, _patience);
        if (reading.Chart is { } chart)
            return Answer(ChartRunner.Run(chart, progress, streams.Interrupted), settings, progress, streams);
        return reading.Map is { } map
            ? Answer(ChartRunner.Run(map, progress, streams.Interrupted), settings, progress, streams)
            : Refused(reading.Errors, streams);
    }

    private static int Answer(ChartAnswer answer, ChartSettings settings, ProgressLine progress, ProgramStreams streams)
    {
        progress.Clear();
        if (answer.Chart is not { } chart)
            return Refused(answer.Errors, streams);
        string text = settings.Json ? Utf8(ChartWriter.ToUtf8(chart))
            : settings.Csv ? ChartCsv.Of(chart)
            : ChartText.Of(chart);
        return Write(text, () => ChartPicture.Draw(chart, settings.DateAsked), settings, streams);
    }

    private static int Answer(MapAnswer answer, ChartSettings settings, ProgressLine progress, ProgramStreams streams)
    {
        progress.Clear();
        if (answer.Map is not { } map)
            return Refused(answer.Errors, streams);
        string text = settings.Json ? Utf8(ChartWriter.ToUtf8(map))
            : settings.Csv ? ChartCsv.Of(map)
            : MapText.Of(map);
        return Write(text, () => MapPicture.Draw(map, settings.DateAsked), settings, streams);
    }

    private static int Write(string text, Func<string> draw, ChartSettings settings, ProgramStreams streams)
    {
        if (settings.Picture is { } picture && PictureOutput.Write(draw(), picture) is { } failure)
        {
            streams.Error.WriteLine($"longrail: --picture: {failure}");
            return ExitCode.Failed;
        }

        streams.Output.Write(Encoding.UTF8.GetBytes(text));
        streams.Output.Flush();
        return ExitCode.Done;
    }

    // Every error belongs to an option.
    private static int Refused(IReadOnlyList<SceneError> errors, ProgramStreams streams)
    {
        SceneInput.PrintErrors(
            [.. errors.Select(error => error with { Path = "--" + error.Path })], null, streams.Error);
        return ExitCode.BadInput;
    }

    private static string Utf8(byte[] text) => Encoding.UTF8.GetString(text);
}
