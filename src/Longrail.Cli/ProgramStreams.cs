namespace Longrail.Cli;

/// <summary>What the program reads from and writes to; tests hand in their own.</summary>
/// <param name="Input">Standard input.</param>
/// <param name="Output">Standard output, UTF-8.</param>
/// <param name="Error">Where messages go.</param>
/// <param name="Interrupted">Cancelled by Ctrl-C.</param>
public sealed record ProgramStreams(Stream Input, Stream Output, TextWriter Error, CancellationToken Interrupted)
{
    /// <summary>Whether a person at a terminal sees <see cref="Error"/>: then long work shows how far it has
    /// come.</summary>
    public bool ErrorIsTerminal { get; init; }
}
