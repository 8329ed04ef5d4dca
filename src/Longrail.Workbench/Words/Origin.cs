namespace Longrail.Workbench.Words;

/// <summary>Where a kind of number comes from.</summary>
/// <param name="Meaning">What it means, in a sentence.</param>
/// <param name="Formula">How it is computed.</param>
/// <param name="Source">Whose formula it is, or that it is measured off the computed path.</param>
public sealed record Origin(string Meaning, string Formula, string Source);
