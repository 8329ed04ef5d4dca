using System.Text;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Writing;
using NJsonSchema;

namespace Longrail.Scenes.Tests.Schemas;

public sealed class SchemaTests
{
    private const string Ball = "\"balls\":[{\"id\":\"cue\",\"x\":1,\"y\":1}]";

    private static readonly JsonSchema _scenes = Load(SceneSchema.ToUtf8());

    // Comments and trailing commas are no matter of a schema: what is checked is the scene as the reader understands
    // it.
    [Theory]
    [MemberData(nameof(SceneFiles.Names), MemberType = typeof(SceneFiles))]
    public void Every_scene_of_the_repository_fits_the_schema(string name)
    {
        Scene asked = SceneReader.Read(SceneFiles.Text(name)).Scene!;
        Assert.Empty(_scenes.Validate(Text(asked)));
        Assert.Empty(_scenes.Validate(Text(SceneFiles.Played(name).Scene.AsUsed)));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("{\"balls\":[{\"x\":1,\"y\":1}]}")]
    [InlineData("{\"balls\":[{\"id\":\"a b\",\"x\":1,\"y\":1}]}")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":1,\"z\":1}]}")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":\"1 kg\",\"y\":1}]}")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":\"one m\",\"y\":1}]}")]
    [InlineData("{" + Ball + ",\"cloth\":{\"slidingFriction\":-1}}")]
    [InlineData("{" + Ball + ",\"cloth\":{\"slidingFriction\":0}}")]
    [InlineData("{" + Ball + ",\"table\":{\"preset\":\"pool-10ft\"}}")]
    [InlineData("{" + Ball + ",\"table\":{\"pockets\":\"some\"}}")]
    [InlineData("{" + Ball + ",\"stroke\":{\"aim\":{\"bank\":\"9\",\"off\":[\"top\"]}}}")]
    [InlineData("{" + Ball + ",\"stroke\":{\"aim\":true}}")]
    [InlineData("{" + Ball + ",\"launch\":[{\"ball\":\"cue\",\"velocity\":[1]}]}")]
    [InlineData("{" + Ball + ",\"longrail\":\"scene/2\"}")]
    [InlineData("{" + Ball + ",\"colour\":1}")]
    public void What_the_reader_refuses_by_its_form_the_schema_refuses_too(string text)
    {
        Assert.NotEmpty(SceneFiles.Errors(text));
        Assert.NotEmpty(_scenes.Validate(text));
    }

    [Theory]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":\"2 1/4 in\",\"across\":\"3.5 diamonds\"}]}")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":\"-1/8 in\",\"y\":\".5m\"}]}")]
    [InlineData("{" + Ball + ",\"stroke\":{\"tip\":{\"right\":\"-1/8 tip\",\"above\":\"0.2R\"}}}")]
    [InlineData("{" + Ball + ",\"stroke\":{\"aim\":{\"at\":\"9\",\"cut\":\"12 deg left\"}}}")]
    [InlineData("{" + Ball + ",\"cloth\":{\"spinDecay\":\"9 rad/s^2\",\"slidingFriction\":\"20 %\"}}")]
    [InlineData("{" + Ball + ",\"cushion\":{\"noseHeight\":\"63.5 %\"}}")]
    public void Every_way_of_writing_a_quantity_fits_the_schema(string text)
    {
        Assert.Empty(SceneReader.Read(text).Errors);
        Assert.Empty(_scenes.Validate(text));
    }

    [Theory]
    [InlineData("schemas/scene-1.schema.json")]
    [InlineData("schemas/outcome-1.schema.json")]
    [InlineData("schemas/player-1.schema.json")]
    [InlineData("docs/scene-fields.md")]
    public void The_files_made_from_the_catalogue_are_up_to_date(string name)
    {
        byte[] made = name switch
        {
            "schemas/scene-1.schema.json" => SceneSchema.ToUtf8(),
            "schemas/outcome-1.schema.json" => OutcomeSchema.ToUtf8(),
            "schemas/player-1.schema.json" => PlayerSchema.ToUtf8(),
            _ => Encoding.UTF8.GetBytes(FieldTable.ToMarkdown()),
        };
        string path = Path.Combine(SceneFiles.Root, name);
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            $"{name} is out of date; run the tests with UPDATE_SNAPSHOTS=1 and look at what changed");
    }

    private static string Text(Scene scene) => Encoding.UTF8.GetString(SceneWriter.ToUtf8(scene));

    private static JsonSchema Load(byte[] schema) =>
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(schema)).GetAwaiter().GetResult();
}
