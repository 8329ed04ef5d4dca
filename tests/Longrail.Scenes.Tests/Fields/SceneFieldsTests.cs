using Longrail.Physics.Equipment;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Tests.Fields;

public sealed class SceneFieldsTests
{
    [Fact]
    public void Every_field_has_a_description_that_is_a_sentence() =>
        Assert.All(SceneFields.All, field => Assert.Matches("^[A-Z].+\\.$", field.Description));

    [Fact]
    public void No_path_stands_twice()
    {
        // A word or a number that stands for a whole object has the object's own path once.
        string[] paths = [.. SceneFields.All.Select(field => field.Path)];
        Assert.Equal(paths.Length, paths.Distinct().Count());
    }

    [Theory]
    [InlineData("table.preset")]
    [InlineData("table.pockets")]
    [InlineData("table.pockets.corner.mouth")]
    [InlineData("cloth.state")]
    [InlineData("cushion.noseHeight")]
    [InlineData("ballSet.friction.decay")]
    [InlineData("cue.endMass")]
    [InlineData("balls[].x")]
    [InlineData("balls[].stripe.axis")]
    [InlineData("stroke.aim")]
    [InlineData("stroke.aim.off")]
    [InlineData("stroke.tip.right")]
    [InlineData("launch[].spin")]
    public void The_catalogue_lists_fields_at_all_depths(string path) =>
        Assert.Contains(SceneFields.All, field => field.Path == path);

    [Fact]
    public void Defaults_in_the_catalogue_are_those_that_are_used()
    {
        ReadyScene ready = SceneFiles.Ready(SceneFiles.OneBall("\"stroke\":{}"));
        EquipmentSpec equipment = ready.Setup.Equipment;
        Assert.Equal("yielding", Default("cushion.law"));
        Assert.Equal(CushionLaw.Yielding, equipment.Cushion.Law);
        Assert.Equal(Default("cushion.restitution"), Text(equipment.Cushion.Restitution));
        Assert.StartsWith(Text(equipment.Cushion.Friction) + " times", Default("cushion.friction"));
        Assert.Equal(Default("cushion.contactTime"), Text(equipment.Cushion.ContactTime) + " s");
        Assert.Equal(Default("table.gravity"), Text(equipment.Table.Gravity) + " m/s^2");
        Assert.Equal(Default("stroke.speed"), Text(ready.Setup.Stroke!.Stroke.Speed) + " m/s");
        Assert.Equal(Default("stroke.aim"), Text(ready.Setup.Stroke.Stroke.Aim));
        Assert.Equal(Default("table.preset"), ready.AsUsed.Table!.Preset);
        Assert.Equal(Default("cloth.state"), ready.AsUsed.Cloth!.State);
        Assert.Equal(Default("ballSet.state"), ready.AsUsed.BallSet!.State);
        Assert.Equal(Default("cue.preset"), ready.AsUsed.Cue!.Preset);
    }

    private static string? Default(string path) => SceneFields.All.Single(field => field.Path == path).Default;

    private static string Text(double value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
