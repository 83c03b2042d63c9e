namespace LabVolatility.Web.Api.Limits;

/// <summary>What a product may be called: what it is, or a grade of the laboratory.</summary>
public sealed record GradesAnswer(IReadOnlyList<string> Kinds, IReadOnlyList<GradeAnswer> Grades);
