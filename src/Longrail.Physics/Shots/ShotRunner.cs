namespace Longrail.Physics.Shots;

/// <summary>Plays a shot: next contact, resolve, repeat.</summary>
public static class ShotRunner
{
    /// <summary>Plays a shot to its end. A pure function: the same set-up and options give the same trace, bit for bit.</summary>
    /// <exception cref="ArgumentException">A quantity is out of its legal range, or balls overlap; the message says which.</exception>
    public static Trace Run(ShotSetup setup, ShotOptions? options = null) => throw new NotImplementedException();
}
