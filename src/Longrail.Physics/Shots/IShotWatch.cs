namespace Longrail.Physics.Shots;

/// <summary>Watches a shot event by event and may end it: a search stops a shot as soon as its fate is
/// decided.</summary>
/// <remarks>Implement it as a struct: the loop then calls it without boxing.</remarks>
public interface IShotWatch
{
    /// <summary>Called once for each event, in order, as it begins.</summary>
    /// <param name="moment">The event.</param>
    /// <returns>Whether the shot shall go on; false ends it with <see cref="StopReason.Watched"/>.</returns>
    bool GoesOn(ShotMoment moment);
}
