using System.Xml.Linq;
using CsCheck;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Tests;

public class SvgTextTests
{
    // Which characters may stand in a document: W3C, XML 1.0 (Fifth Edition), production [2] Char. The XML reader
    // checks it.
    [Theory]
    [InlineData("</text><script>alert(1)</script>", "</text><script>alert(1)</script>")]
    [InlineData("a & b < c > d \" e ' f", "a & b < c > d \" e ' f")]
    [InlineData("]]>", "]]>")]
    [InlineData("\u0000\u0007\u001b\u007f", "\uFFFD\uFFFD\uFFFD\uFFFD")]
    [InlineData("two\nlines\tand a tab", "two lines and a tab")]
    [InlineData("\u202Egnp.exe", "\uFFFDgnp.exe")]
    [InlineData("\uFFFE\uFFFF", "\uFFFD\uFFFD")]
    [InlineData("Ø 9 Zug 球 🎱", "Ø 9 Zug 球 🎱")]
    public void Any_text_comes_back_from_an_xml_reader_cleaned(string text, string expected) =>
        Assert.Equal(expected, XElement.Parse($"<t>{SvgText.Escape(text)}</t>").Value);

    [Fact]
    public void Half_a_surrogate_pair_is_replaced() =>
        Assert.Equal("a\uFFFDb", XElement.Parse($"<t>{SvgText.Escape("a\uD83Cb")}</t>").Value);

    [Fact]
    public void Whatever_the_text_the_picture_stays_one_well_formed_document() =>
        Gen.String[Gen.Char['\u0000', '\uFFFF'], 0, 40].Sample(text =>
        {
            var svg = new SvgWriter(100, 100, text, text);
            svg.Text(new SvgPoint(1, 2), text, new TextStyle(10, "#000000"));
            XElement root = XElement.Parse(svg.Finish());
            Assert.Equal(["title", "desc", "text"], root.Elements().Select(e => e.Name.LocalName));
            Assert.Equal(SvgText.Clean(text), root.Elements().Last().Value);
        });
}
