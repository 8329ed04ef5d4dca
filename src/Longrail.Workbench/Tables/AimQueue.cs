using Longrail.Scenes;
using Longrail.Scenes.Compiling;

namespace Longrail.Workbench.Tables;

/// <summary>Finds aims for all open pages, a few at a time: a search takes a core for some tenths of a second, and ten
/// pages that search at once must not starve each other's drawing.</summary>
internal sealed class AimQueue : IDisposable
{
    private readonly SemaphoreSlim _places = new(Math.Max(1, Environment.ProcessorCount - 1));

    /// <summary>Makes a scene ready on a thread of its own once there is a place.</summary>
    /// <exception cref="OperationCanceledException">The page has moved on before there was a place.</exception>
    public Task<SceneCompilation> CompileAsync(Scene scene, CancellationToken cancellationToken) =>
        RunAsync(() => SceneCompiler.Compile(scene), cancellationToken);

    /// <summary>Does any work that takes a core for a while, on a thread of its own once there is a place.</summary>
    /// <exception cref="OperationCanceledException">The page has moved on before there was a place.</exception>
    public async Task<T> RunAsync<T>(Func<T> work, CancellationToken cancellationToken)
    {
        await _places.WaitAsync(cancellationToken);
        try
        {
            return await Task.Run(work, CancellationToken.None);
        }
        finally
        {
            _places.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _places.Dispose();
}
