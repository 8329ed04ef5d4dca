namespace Longrail.Workbench.Words;

/// <summary>A number on the page, in the trade's words, that knows where it comes from.</summary>
/// <param name="Name">What it is: "throw".</param>
/// <param name="Text">The number with its unit and side: "1.6° left".</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Inputs">What went into it here, each with its value.</param>
public sealed record Figure(string Name, string Text, Origin Origin, IReadOnlyList<(string Name, string Value)> Inputs);
