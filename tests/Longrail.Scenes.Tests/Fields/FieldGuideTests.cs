using System.Text;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Tests.Fields;

/// <summary>The page docs/guide/scene-file.md is made from the catalogue of fields. UPDATE_SNAPSHOTS=1 writes its table
/// anew.</summary>
public sealed class FieldGuideTests
{
    private const string Begin = "<!-- fields: made from the catalogue, not by hand -->";
    private const string End = "<!-- /fields -->";

    [Fact]
    public void The_guide_lists_the_fields_of_the_catalogue()
    {
        string path = Path.Combine(SceneFiles.Root, "docs", "guide", "scene-file.md");
        string page = File.ReadAllText(path).ReplaceLineEndings("\n");
        int begin = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int end = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(begin >= Begin.Length && end > begin, "The page has lost the marks between which the table stands.");
        string wanted = $"\n{Tables()}\n";
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllText(path, page[..begin] + wanted + page[end..]);
        else
            Assert.Equal(wanted, page[begin..end]);
    }

    private static string Tables()
    {
        var text = new StringBuilder();
        string part = "-";
        foreach (FieldInfo field in SceneFields.All)
        {
            string here = field.Path.Contains('.', StringComparison.Ordinal) ? field.Path[..field.Path.IndexOf('.')] : "";
            if (here != part)
            {
                part = here;
                string title = here.Length == 0 ? "The scene itself" : $"`{here}`";
                text.Append($"\n### {title}\n\n| field | holds | if left out | meaning |\n|---|---|---|---|\n");
            }

            text.Append($"| `{field.Path}` | {Cell(Holds(field))} | {Cell(field.Default ?? "")} | {Cell(field.Description)} |\n");
        }

        return text.ToString();
    }

    private static string Holds(FieldInfo field)
    {
        if (field.Words is { } words)
            return string.Join(", ", words.Select(word => $"`{word}`"));
        if (field.Kind is not { } kind)
            return "text";
        string units = kind.IsPlainNumber ? "" : $"; units {string.Join(", ", kind.UnitNames())}";
        return $"{field.Range!.Describe(kind.IsPlainNumber ? "" : kind.BareUnit)}{units}";
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
