using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Text;
using Longrail.Coaching.Effects;
using Longrail.Drawing;
using Longrail.Scenes.Compiling;
using Spectre.Console.Cli;

namespace Longrail.Cli.Verbs;

/// <summary>Splits a shot's way off the plain mirror bank into causes.</summary>
internal sealed class EffectsCommand : Command<EffectsSettings>
{
    public const string Description =
        "Why it goes short or long: a shot against its plain mirror bank, split into causes";

    /// <inheritdoc/>
    public override int Execute(CommandContext context, EffectsSettings settings, CancellationToken cancellationToken)
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
        EffectsAnswer answer = EffectsRunner.Run(scene, settings.Options, streams.Interrupted);
        if (answer.Budget is not { } budget)
        {
            SceneInput.PrintErrors(answer.Errors, null, streams.Error);
            return answer.IsUnreachable ? ExitCode.Failed : ExitCode.BadInput;
        }

        EffectUnit unit = settings.ShownUnit;
        if (unit == EffectUnit.HalfOpenings && !budget.HasHalfOpenings)
        {
            streams.Error.WriteLine(
                "longrail: --unit: there is no pocket at the target to measure by; allowed here: diamonds, mm");
            return ExitCode.Failed;
        }

        if (settings.Picture is { } picture)
        {
            string sheet = EffectsPicture.Draw(budget, unit, scene.AsUsed.Table?.Preset);
            if (PictureOutput.Write(sheet, picture) is { } failure)
            {
                streams.Error.WriteLine($"longrail: --picture: {failure}");
                return ExitCode.Failed;
            }
        }

        streams.Output.Write(
            settings.Json ? EffectsWriter.ToUtf8(budget) : Encoding.UTF8.GetBytes(EffectsText.Of(budget, unit)));
        streams.Output.Flush();
        return ExitCode.Done;
    }
}
