namespace Longrail.Physics.Shots;

/// <summary>The watch that lets every shot go on.</summary>
internal readonly struct WatchToTheEnd : IShotWatch
{
    /// <inheritdoc/>
    public bool GoesOn(ShotMoment moment) => true;
}
