namespace Longrail.Cli;

/// <summary>What the program tells its caller when it ends.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Something was asked for that could not be computed, or not be written; it was said why.</summary>
    public const int Failed = 1;

    /// <summary>Bad usage or bad input; it was said what is wrong and what is allowed.</summary>
    public const int BadInput = 2;

    /// <summary>Ended by Ctrl-C, as shells count it.</summary>
    public const int Interrupted = 130;
}
