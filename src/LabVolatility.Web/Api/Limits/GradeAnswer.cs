using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Api.Limits;

/// <summary>A grade of the laboratory.</summary>
public sealed record GradeAnswer(string Code, string Name, string Kind, string State, string Rule, decimal Confidence, IReadOnlyList<string> Methods)
{
    public static GradeAnswer Of(Grade grade) => new(
        grade.Code, grade.Name, grade.Kind.Text(), grade.State.Text(), grade.Rule.Text(), Rounding.Trim(grade.Confidence),
        [.. grade.Tests.Select(t => t.Method).Distinct()]);
}
