using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Tests;

/// <summary>The workbench stands above the libraries and knows no other program.</summary>
public sealed class HouseTests
{
    [Fact]
    public void The_workbench_knows_the_libraries_and_no_program()
    {
        string[] ours = [.. typeof(OpenTable).Assembly.GetReferencedAssemblies().Select(a => a.Name!)
            .Where(name => name.StartsWith("longrail", StringComparison.OrdinalIgnoreCase))
                .Order(StringComparer.Ordinal)];
        Assert.Equal(["Longrail.Coaching", "Longrail.Drawing", "Longrail.Physics", "Longrail.Scenes"], ours);
    }
}
