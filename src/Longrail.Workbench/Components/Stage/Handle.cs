using Longrail.Drawing;

namespace Longrail.Workbench.Components.Stage;

/// <summary>Something on a drawing that can be grabbed.</summary>
/// <param name="Name">What the script calls it.</param>
/// <param name="Label">What it is, for screen readers.</param>
/// <param name="Value">Where it is, in words with units.</param>
/// <param name="Now">A number that stands for the place, within <paramref name="Least"/> and
/// <paramref name="Most"/>.</param>
/// <param name="Least">Least number.</param>
/// <param name="Most">Largest number.</param>
/// <param name="At">Where it is on the sheet.</param>
/// <param name="Radius">The ring around it, sheet units.</param>
public sealed record Handle(
    string Name, string Label, string Value, double Now, double Least, double Most, SvgPoint At, double Radius);
