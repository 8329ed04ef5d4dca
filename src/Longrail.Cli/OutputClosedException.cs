namespace Longrail.Cli;

/// <summary>Nobody reads the output any more.</summary>
public sealed class OutputClosedException : IOException
{
    /// <summary>Creates it.</summary>
    /// <param name="message">What happened.</param>
    /// <param name="inner">The error of the operating system.</param>
    public OutputClosedException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
