using Longrail.Drawing;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Workbench.Sheets;
using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Hosting;

/// <summary>Plays and draws the opening scene once while the browser is still being opened, so that the first page
/// does not wait for code to be compiled.</summary>
internal sealed class WarmUp : BackgroundService
{
    // The just-in-time compiler takes a method up again after thirty calls.
    private const int Rounds = 40;

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.Run(
        () =>
        {
            ReadyScene ready = SceneCompiler.Compile(SampleScenes.Opening.Scene!).Ready!;
            for (int k = 0; k < Rounds && !stoppingToken.IsCancellationRequested; k++)
                _ = ShotPicture.DrawParts(SheetEndpoints.Input(Outcome.Of(ready)), 1900);
        },
        stoppingToken);
}
