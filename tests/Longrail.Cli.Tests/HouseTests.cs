using System.Reflection;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing;
using Longrail.Physics.Shots;
using Longrail.Scenes;

namespace Longrail.Cli.Tests;

/// <summary>The arrows of the house go one way.</summary>
public sealed class HouseTests
{
    private static readonly Assembly _physics = typeof(ShotRunner).Assembly;
    private static readonly Assembly _scenes = typeof(Scene).Assembly;
    private static readonly Assembly _coaching = typeof(ContrastRunner).Assembly;
    private static readonly Assembly _drawing = typeof(ShotPicture).Assembly;

    [Fact]
    public void Physics_stands_on_the_base_class_library_alone() =>
        Assert.All(References(_physics), name => Assert.StartsWith("System", name, StringComparison.Ordinal));

    [Fact]
    public void Scenes_know_the_physics_and_nothing_above() => Assert.Equal(["Longrail.Physics"], OfOurs(_scenes));

    [Fact]
    public void Coaching_knows_the_physics_and_the_scenes() => Assert.Equal(["Longrail.Physics", "Longrail.Scenes"], OfOurs(_coaching));

    [Fact]
    public void Drawing_knows_what_is_drawn_and_no_program() => Assert.DoesNotContain("longrail", OfOurs(_drawing));

    private static string[] References(Assembly assembly) => [.. assembly.GetReferencedAssemblies().Select(a => a.Name!)];

    private static string[] OfOurs(Assembly assembly) =>
        [.. References(assembly).Where(name => name.StartsWith("longrail", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)];
}
