using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Web.Methods;
using Xunit;

namespace LabVolatility.Web.Tests.Methods;

public sealed class PrecisionDraftTests : BunitContext
{
    private static readonly TestMethod Method = TestMethods.All[0];

    [Fact]
    public void Read_ConstantAndSlope_GiveTheFormTyped()
    {
        var draft = PrecisionDraft.For(Method);
        (draft.RepeatabilityConstant, draft.RepeatabilitySlope, draft.Source) = ("1,00068", "0.00807", "own copy");

        var entry = draft.Read(Method, out var problems);

        Assert.Empty(problems);
        var statement = PrecisionInForce.Statement(entry!);
        Assert.Equal(new LinearForm(1.00068m, 0.00807m), statement.Repeatability);
        Assert.Null(statement.Reproducibility);
        Assert.Equal("1.00068 + 0.00807 · X", MethodWords.Form(statement.Repeatability));
    }

    [Fact]
    public void Read_NoNumbers_NamesEachField()
    {
        var draft = PrecisionDraft.For(Method);
        (draft.RepeatabilityConstant, draft.High) = ("a + b", "high");

        Assert.Null(draft.Read(Method, out var problems));
        Assert.Equal(["/high", "/repeatability"], problems.Select(p => p.Field));
    }

    // Worked by hand: 0.00807 (60 + 124) = 1.48488; 0.0161 (60 + 124) = 2.9624.
    [Fact]
    public void WorkedExample_TypedLevel_ShowsBothFigures()
    {
        var example = Render<WorkedExample>(p => p.Add(e => e.Statements, [PublishedPrecision.All[0]]));

        example.Find("input").Change("60 kPa");

        Assert.Contains("= 1.48488 kPa at X = 60 kPa", example.Markup, StringComparison.Ordinal);
        Assert.Contains("= 2.9624 kPa at X = 60 kPa", example.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void WorkedExample_LevelOutsideTheRange_HasNoFigure()
    {
        var level = AbsolutePressure.From(120m, PressureUnit.Kilopascal);

        var line = Assert.Single(WorkedExample.Lines(PublishedPrecision.All[0], level));

        Assert.Contains("no precision there", line.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ASTM-D5191", "ASTM D5191"), InlineData("ASTM D5191", "ASTM D5191"), InlineData("en-13016-1", "EN 13016-1")]
    public void Address_HyphenOrSpace_FindsTheMethod(string address, string designation) =>
        Assert.Equal(designation, MethodAddress.Find(address)?.Designation);

    [Fact]
    public void NotSet_OtherEdition_NeverFillsIn() =>
        Assert.Equal(["DVPE", "RVP"], MethodWords.NotSet(Method, PublishedPrecision.All));
}
