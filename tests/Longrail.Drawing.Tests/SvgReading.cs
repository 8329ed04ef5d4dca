using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Longrail.Drawing.Tests;

/// <summary>Reads a picture back as XML and checks what every picture must fulfil.</summary>
internal static partial class SvgReading
{
    private static readonly XNamespace _svg = "http://www.w3.org/2000/svg";

    /// <summary>The root, after checking that the document is sound.</summary>
    internal static XElement Sound(string text)
    {
        XElement root = XElement.Parse(text);
        Assert.Equal(_svg + "svg", root.Name);
        double[] box = [.. Required(root, "viewBox").Split(' ').Select(Number)];
        Assert.Equal(4, box.Length);
        Assert.True(box[2] > 0 && box[3] > 0);
        Assert.NotEqual("", root.Element(_svg + "title")!.Value);
        Assert.NotEqual("", root.Element(_svg + "desc")!.Value);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(MinusZero(), text);
        foreach (XAttribute attribute in root.DescendantsAndSelf().Attributes().Where(a => IsNumeric(a.Name.LocalName)))
        {
            // A path holds thousands of numbers: the message is made only if it is needed.
            if (!Numbers().Matches(attribute.Value).All(number => double.IsFinite(Number(number.Value))))
                Assert.Fail(attribute.ToString());
        }

        return root;
    }

    /// <summary>All elements of a name.</summary>
    internal static IEnumerable<XElement> All(XElement root, string name) => root.Descendants(_svg + name);

    /// <summary>The elements of a name within the groups of a class.</summary>
    internal static IEnumerable<XElement> Within(XElement root, string group, string name) =>
        All(root, "g").Where(g => (string?)g.Attribute("class") == group).SelectMany(g => All(g, name));

    internal static double Value(XElement element, string attribute) => Number(Required(element, attribute));

    private static string Required(XElement element, string attribute) =>
        (string?)element.Attribute(attribute)
            ?? throw new InvalidOperationException($"{element.Name} has no {attribute}");

    private static bool IsNumeric(string name) =>
        name is "d" or "x" or "y" or "x1" or "x2" or "y1" or "y2" or "cx" or "cy" or "r" or "rx" or "ry"
            or "width" or "height" or "stroke-width" or "font-size" or "viewBox" or "stroke-dasharray";

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex("-?[0-9]+(\\.[0-9]+)?")]
    private static partial Regex Numbers();

    [GeneratedRegex("[\" ,]-0[\" ,]")]
    private static partial Regex MinusZero();
}
