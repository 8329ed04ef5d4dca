using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Compiling;

namespace Longrail.Scenes.Outcomes;

/// <summary>A scene, what happened in it, and what an instructor reads off it.</summary>
/// <param name="Scene">The scene that was played.</param>
/// <param name="Trace">What happened.</param>
/// <param name="Readings">The same in the trade's terms.</param>
public sealed record Outcome(ReadyScene Scene, Trace Trace, TraceReadings Readings)
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "outcome/1";

    /// <summary>Plays a scene.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="options">Limits of the run; null for the usual ones.</param>
    public static Outcome Of(ReadyScene scene, ShotOptions? options = null)
    {
        Trace trace = ShotRunner.Run(scene.Setup, options);
        return new Outcome(scene, trace, TraceReadings.Of(trace, scene.StripeAxes));
    }
}
