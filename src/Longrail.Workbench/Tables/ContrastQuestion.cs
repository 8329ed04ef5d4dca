using Longrail.Coaching.Contrasts;

namespace Longrail.Workbench.Tables;

/// <summary>What one page compares; kept while the page goes from place to place.</summary>
internal sealed class ContrastQuestion
{
    /// <summary>The field that is changed.</summary>
    public string First { get; set; } = "stroke.speed";

    /// <summary>Its levels as typed; empty to begin with levels around the table's own.</summary>
    public string FirstLevels { get; set; } = "";

    /// <summary>A second field; empty for none.</summary>
    public string Second { get; set; } = "";

    /// <summary>Its levels.</summary>
    public string SecondLevels { get; set; } = "";

    /// <summary>What is held.</summary>
    public Hold Hold { get; set; }

    /// <summary>Whether the variants stand beside each other instead of over each other.</summary>
    public bool Apart { get; set; }
}
