using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Lines;
using Longrail.Cli.Text;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>Plays a scene and says what happened.</summary>
internal sealed class ShootCommand : Command<ShootSettings>
{
    /// <summary>What help says about the verb.</summary>
    public const string Description =
        "Play a scene: what the balls do, event by event, with readings in the trade's terms";

    /// <inheritdoc/>
    public override int Execute(CommandContext context, ShootSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        ShotOptions options = settings.UntilSeconds is { } seconds
            ? new ShotOptions(MaxTime: seconds)
            : ShotOptions.Default;
        if (settings.Lines)
            return PlayLines(settings.File, options, streams);
        if (settings.Picture is { } wanted && PictureOutput.Refusal(wanted) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: --picture: {refusal}");
            return ExitCode.BadInput;
        }

        ReadyScene? scene = SceneInput.Read(settings.File, streams, out int exitCode);
        if (scene is null)
            return exitCode;
        Outcome outcome = Outcome.Of(scene, options);
        if (settings.Picture is { } picture && PictureOutput.Write(outcome, picture) is { } failure)
        {
            streams.Error.WriteLine($"longrail: --picture: {failure}");
            return ExitCode.Failed;
        }

        streams.Output.Write(
            settings.Json ? OutcomeWriter.ToUtf8(outcome) : Encoding.UTF8.GetBytes(OutcomeText.Of(outcome)));
        streams.Output.Flush();
        return ExitCode.Done;
    }

    private static int PlayLines(string file, ShotOptions options, ProgramStreams streams)
    {
        using Stream? input = SceneInput.Open(file, streams);
        if (input is null)
            return ExitCode.BadInput;
        long failed = new LinePlayer(options).Play(input, streams.Output, streams.Interrupted);
        if (failed == 0)
            return ExitCode.Done;
        string lines = failed == 1 ? "line" : "lines";
        streams.Error.WriteLine(
            $"longrail: {failed} {lines} could not be played; see the error objects in the output");
        return ExitCode.Failed;
    }
}
