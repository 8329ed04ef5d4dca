using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing;
using Longrail.Scenes.Compiling;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>Compares shots in which one thing changes and the rest is held.</summary>
internal sealed class ContrastCommand : Command<ContrastSettings>
{
    public const string Description = "Change one thing, hold the rest: how far it moves a bank";

    /// <inheritdoc/>
    public override int Execute(CommandContext context, ContrastSettings settings, CancellationToken cancellationToken)
    {
        var streams = (ProgramStreams)context.Data!;
        if (settings.Picture is { } wanted && PictureOutput.Refusal(wanted) is { } refusal)
        {
            streams.Error.WriteLine($"longrail: --picture: {refusal}");
            return ExitCode.BadInput;
        }

        ReadyScene? scene = SceneInput.Read(settings.File, streams, out int exitCode);
        if (scene is null)
            return exitCode;
        ContrastAnswer answer = ContrastRunner.Run(
            new ContrastRequest(scene.Asked, settings.Variations, settings.Held));
        if (answer.Contrast is not { } contrast)
        {
            SceneInput.PrintErrors(answer.Errors, null, streams.Error);
            return answer.IsUnreachable ? ExitCode.Failed : ExitCode.BadInput;
        }

        if (settings.Picture is { } picture
            && PictureOutput.Write(ContrastPicture.Draw(contrast, scene.AsUsed.Table?.Preset), picture) is { } failure)
        {
            streams.Error.WriteLine($"longrail: --picture: {failure}");
            return ExitCode.Failed;
        }

        streams.Output.Write(
            settings.Json ? ContrastWriter.ToUtf8(contrast) : Encoding.UTF8.GetBytes(ContrastText.Of(contrast)));
        streams.Output.Flush();
        return ExitCode.Done;
    }
}
