using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>What the laboratory knows now: areas with limits, grades, precision.</summary>
internal sealed record KnownCatalogue(IReadOnlyList<Area> Areas, IReadOnlyList<Grade> Grades, IReadOnlyList<PrecisionStatement> Precision);
