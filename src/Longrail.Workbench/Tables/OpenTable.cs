using System.Globalization;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;

namespace Longrail.Workbench.Tables;

/// <summary>The table of one open page: the scene as it is asked for, what the physics makes of it, and the steps that
/// led here. The scene is the only thing that is changed; everything else follows from it.</summary>
/// <remarks>Belongs to one circuit and is used on its thread alone; only the search for an aim leaves it.</remarks>
internal sealed class OpenTable(AimQueue queue) : IDisposable
{
    private readonly SceneHistory _history = new();
    private CancellationTokenSource? _search;
    private double? _lastAim;

    /// <summary>Raised after anything has changed.</summary>
    public event Action? Changed;

    /// <summary>The scene as it is asked for.</summary>
    public Scene Scene { get; private set; } = new();

    /// <summary>What happens; while <see cref="NoAim"/> says that there is no aim, the balls at rest. Null before a
    /// scene has been opened.</summary>
    public Outcome? Outcome { get; private set; }

    /// <summary>What was wrong with the last change, which was then not made; empty if nothing was.</summary>
    public IReadOnlyList<SceneError> Refused { get; private set; } = [];

    /// <summary>Why the aim that is asked for does not exist; null if it does.</summary>
    public string? NoAim { get; private set; }

    /// <summary>Something to be said about the table that is no error; null for nothing.</summary>
    public string? Note { get; private set; }

    /// <summary>Whether an aim is being looked for; until it is found the stick stays where it was.</summary>
    public bool IsFinding { get; private set; }

    /// <summary>Whether the table is in the middle of a drag.</summary>
    public bool IsTrying { get; private set; }

    /// <summary>The steps that led here.</summary>
    public SceneHistory History => _history;

    /// <summary>Whether the stick is found for a task (a cut or a bank), and not just pointed.</summary>
    public bool HasTask => Scene.Stroke?.Aim is { Angle: null };

    /// <summary>Whether a change of the table finds the aim anew.</summary>
    public bool FindsAnew => HasTask && Scene.Stroke!.Aim!.Solved is null;

    /// <summary>Opens a scene that was read; the steps before it can be taken back.</summary>
    public void Open(SceneReading reading)
    {
        if (reading.Scene is null)
            Refuse(reading.Errors);
        else
            Take(reading.Scene, TableStep.Add);
    }

    /// <summary>Changes fields of the scene, all or none.</summary>
    /// <param name="step">Whether this is a step of its own, goes on with the last one, or is only tried for the length
    /// of a drag.</param>
    /// <param name="edits">The fields and their values as a user would type them.</param>
    /// <returns>Whether the change was made.</returns>
    public bool Change(TableStep step, params ReadOnlySpan<(string Path, string Value)> edits)
    {
        Scene scene = Scene;
        foreach ((string path, string value) in edits)
        {
            SceneReading reading = SceneSetting.With(scene, path, value);
            if (reading.Scene is null)
            {
                Refuse(reading.Errors);
                return false;
            }

            scene = reading.Scene;
        }

        return Take(scene, step);
    }

    /// <summary>Ends a drag: what was tried becomes a step, and an aim is found for it.</summary>
    public void Settle() => Take(Scene, TableStep.Add);

    /// <summary>Gives a drag up: the table stands as before it.</summary>
    public void GiveUp() => Walk(true, () => _history.Current);

    /// <summary>Takes a step back.</summary>
    public void Undo() => Walk(_history.CanUndo, _history.Undo);

    /// <summary>Does a step again.</summary>
    public void Redo() => Walk(_history.CanRedo, _history.Redo);

    /// <summary>Takes up the steps that the browser remembers, and the table at their place.</summary>
    /// <returns>Whether there was a table there.</returns>
    public bool Restore(IReadOnlyList<string> links, int place)
    {
        if (!_history.Restore(links, place) || SceneLink.Read(_history.Current).Scene is not { } scene)
            return false;
        return Take(scene, TableStep.Walk);
    }

    /// <summary>Says something about the table until it is dismissed.</summary>
    public void Say(string note)
    {
        Note = note;
        Changed?.Invoke();
    }

    /// <summary>Forgets what was refused or said.</summary>
    public void Dismiss()
    {
        Refused = [];
        Note = null;
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _search?.Cancel();
        _search?.Dispose();
    }

    private void Walk(bool can, Func<string> move)
    {
        if (can && SceneLink.Read(move()).Scene is { } scene)
            Take(scene, TableStep.Walk);
    }

    private bool Take(Scene scene, TableStep step)
    {
        StopSearch();
        IsTrying = step == TableStep.Try;
        bool needsSearch = NeedsSearch(scene);
        Scene played = needsSearch && _lastAim is { } held ? WithAim(scene, held) : scene;
        if (needsSearch && _lastAim is null)
            played = WithAim(scene, 0);
        SceneCompilation made = SceneCompiler.Compile(played);
        if (made.Ready is null && !made.IsUnreachable)
        {
            Refuse(made.Errors);
            return false;
        }

        Scene = scene;
        Refused = [];
        NoAim = null;
        if (made.Ready is { } ready)
            Play(ready);
        Remember(step);
        if (needsSearch && step != TableStep.Try)
            _ = FindAsync(scene);
        Changed?.Invoke();
        return true;
    }

    private void Remember(TableStep step)
    {
        if (step == TableStep.Add)
            _history.Add(SceneLink.Of(Scene));
        else if (step == TableStep.GoOn)
            _history.Replace(SceneLink.Of(Scene));
    }

    private void Play(ReadyScene ready)
    {
        Outcome = Outcome.Of(ready);
        _lastAim = ready.Setup.Stroke?.Stroke.Aim ?? _lastAim;
    }

    // A cut is found in a millisecond or two, a bank takes some tenths of a second; both are looked for in the queue,
    // and a newer change puts an end to the search.
    private async Task FindAsync(Scene scene)
    {
        var search = new CancellationTokenSource();
        _search = search;
        IsFinding = true;
        try
        {
            SceneCompilation made = await queue.CompileAsync(scene, search.Token);
            if (search.IsCancellationRequested)
                return;
            if (made.Ready is { } ready)
                Play(ready);
            else
                Stand(made);
            IsFinding = false;
            Changed?.Invoke();
        }
        catch (OperationCanceledException)
        {
            // A newer change has taken over.
        }
    }

    // No aim does what is asked: the balls stand, and the reason is said.
    private void Stand(SceneCompilation made)
    {
        NoAim = string.Join("; ", made.Errors.Select(error => error.Problem));
        if (Outcome is not { } last)
            return;
        var balls = new ShotBall[last.Trace.Setup.Balls.Count];
        for (int i = 0; i < balls.Length; i++)
        {
            ShotBall ball = last.Trace.Setup.Balls[i];
            balls[i] = ball with { Start = BallState.AtRest(ball.Start.Position) };
        }

        Trace still = ShotRunner.Run(new ShotSetup(last.Trace.Setup.Equipment, balls));
        Outcome = new Outcome(last.Scene, still, TraceReadings.Of(still, last.Scene.StripeAxes));
    }

    private void StopSearch()
    {
        _search?.Cancel();
        _search?.Dispose();
        _search = null;
        IsFinding = false;
    }

    private void Refuse(IReadOnlyList<SceneError> errors)
    {
        Refused = errors;
        Changed?.Invoke();
    }

    private static bool NeedsSearch(Scene scene) => scene.Stroke?.Aim is { Angle: null, Solved: null };

    private static Scene WithAim(Scene scene, double aim) =>
        SceneSetting.With(scene, "stroke.aim.solved", aim.ToString("R", CultureInfo.InvariantCulture)).Scene ?? scene;
}
