using System.Text;
using Longrail.Scenes.Players;
using Longrail.Scenes.Schemas;
using NJsonSchema;

namespace Longrail.Scenes.Tests.Players;

public sealed class PlayerFileTests
{
    private const double Degree = Math.PI / 180;

    private static readonly JsonSchema _schema =
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(PlayerSchema.ToUtf8())).GetAwaiter().GetResult();

    [Fact]
    public void A_player_file_carries_units_as_a_scene_does()
    {
        PlayerFile player = Read("""
            {
              "longrail": "player/1", "name": "Blue chalk", "notes": "filmed twice", "preset": "county",
              "aim": "0.3 deg", "speed": "8 %", "tip": { "across": "1.5 mm", "up": "1/16 in" }, "elevation": 0.02,
              "hardStroke": "10 mph",
            }
            """);

        Assert.Equal("Blue chalk", player.Name);
        Assert.Equal(PlayerLevel.County, player.Preset);
        Assert.Equal(0.3 * Degree, player.Aim!.Value.Value, 15);
        Assert.Equal(0.08, player.Speed!.Value.Value, 15);
        Assert.Equal(0.0015, player.Tip!.Across!.Value.Value, 15);
        Assert.Equal(0.0254 / 16, player.Tip.Up!.Value.Value, 15);
        Assert.Equal(0.02, player.Elevation!.Value.Value);
        Assert.Equal(4.4704, player.HardStroke!.Value.Value, 12);
    }

    [Fact]
    public void Everything_may_be_left_out()
    {
        PlayerFile player = Read("{}");

        Assert.Null(player.Preset);
        Assert.Null(player.Aim);
        Assert.Null(player.Tip);
    }

    [Theory]
    [InlineData("{\"aim\":-0.1}", "aim", "from 0 to 10 deg")]
    [InlineData("{\"aim\":\"-0.3 deg\"}", "aim", "from 0 to 10 deg")]
    [InlineData("{\"aim\":\"11 deg\"}", "aim", "from 0 to 10 deg")]
    [InlineData("{\"aim\":\"3 mm\"}", "aim", "deg")]
    [InlineData("{\"aim\":\"0.3\"}", "aim", "deg")]
    [InlineData("{\"speed\":\"51 %\"}", "speed", "from 0 to 50 %")]
    [InlineData("{\"speed\":-1}", "speed", "from 0 to 50 %")]
    [InlineData("{\"speed\":1e999}", "speed", "from 0 to 50 %")]
    [InlineData("{\"tip\":{\"across\":\"21 mm\"}}", "tip.across", "from 0 to 20 mm")]
    [InlineData("{\"tip\":{\"up\":-1e-9}}", "tip.up", "from 0 to 20 mm")]
    [InlineData("{\"tip\":{\"up\":\"0.1 R\"}}", "tip.up", "mm")]
    [InlineData("{\"elevation\":\"25 deg\"}", "elevation", "from 0 to 20 deg")]
    [InlineData("{\"hardStroke\":0}", "hardStroke", "from 0.5 to 30 m/s")]
    [InlineData("{\"tip\":2}", "tip", "across, up")]
    [InlineData("{\"name\":9}", "name", "text")]
    [InlineData("[]", "", "one object")]
    [InlineData("{\"aim\":0.01,\"aim\":0.02}", "aim", "once")]
    [InlineData("", "", "nothing to read")]
    [InlineData("{\"aim\":", "", "before the player does")]
    public void What_is_wrong_is_said_with_its_field_and_what_would_be_right(string text, string field, string right)
    {
        SceneError error = Error(text);

        Assert.Equal(field, error.Path);
        Assert.Contains(right, error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("scene", error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"aims\":1}", "\"aim\"")]
    [InlineData("{\"elevaton\":1}", "\"elevation\"")]
    [InlineData("{\"across\":\"1 mm\"}", "\"tip.across\"")]
    [InlineData("{\"tip\":{\"acros\":0.001}}", "\"across\"")]
    [InlineData("{\"preset\":\"clubb\"}", "\"club\"")]
    [InlineData("{\"longrail\":\"player/2\"}", "\"player/1\"")]
    public void What_was_meant_is_guessed(string text, string guess) => Assert.Equal(guess, Error(text).Suggestion);

    [Fact]
    public void A_scene_is_no_player()
    {
        IReadOnlyList<SceneError> errors = PlayerFileReader.Read(SceneFiles.Text("first-bank.json")).Errors;

        Assert.Contains(errors, error => error.Path == "longrail" && error.Allowed == "\"player/1\"");
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"aim\":\"0.3 deg\",\"tip\":{\"up\":\"1.5 mm\"}}")]
    [InlineData("{\"preset\":\"national\",\"speed\":\"2 %\",\"elevation\":0}")]
    public void The_schema_takes_what_the_reader_takes(string text)
    {
        Assert.Empty(PlayerFileReader.Read(Encoding.UTF8.GetBytes(text)).Errors);
        Assert.Empty(_schema.Validate(text));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{\"aim\":-0.1}")]
    [InlineData("{\"aims\":0.1}")]
    [InlineData("{\"tip\":{\"acros\":0.001}}")]
    [InlineData("{\"preset\":\"clubb\"}")]
    [InlineData("{\"speed\":\"8 kg\"}")]
    public void The_schema_refuses_what_the_reader_refuses_by_its_form(string text)
    {
        Assert.NotEmpty(PlayerFileReader.Read(Encoding.UTF8.GetBytes(text)).Errors);
        Assert.NotEmpty(_schema.Validate(text));
    }

    [Fact]
    public void The_player_of_the_repository_is_in_order()
    {
        byte[] text = SceneFiles.Text(Path.Combine("players", "club.json"));

        Assert.Empty(PlayerFileReader.Read(text).Errors);
    }

    private static PlayerFile Read(string text)
    {
        PlayerFileReading reading = PlayerFileReader.Read(Encoding.UTF8.GetBytes(text));
        Assert.True(reading.Errors.Count == 0, string.Join("\n", reading.Errors));
        return reading.Player!;
    }

    private static SceneError Error(string text)
    {
        PlayerFileReading reading = PlayerFileReader.Read(Encoding.UTF8.GetBytes(text));
        Assert.Null(reading.Player);
        return Assert.Single(reading.Errors);
    }
}
