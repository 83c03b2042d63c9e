using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>From what was asked for and the batches' frozen evidence to what stands on a cargo certificate.</summary>
internal static class CargoText
{
    public static CargoContent Of(
        LaboratorySettings settings, CargoRequest request, IReadOnlyDictionary<string, CargoBatch> batches, Actor signer,
        string number, int revision, string checkCode, DateTimeOffset now, ReplacedCertificate? replaces) => new()
        {
            LaboratoryName = settings.Name,
            LaboratoryPlace = settings.Place,
            TimeZone = settings.TimeZone,
            Number = number,
            Revision = revision,
            IssuedAt = now,
            CheckCode = checkCode,
            CheckAddress = CertificateFiling.CheckAddress(settings, checkCode),
            Replaces = replaces,
            Ship = request.Ship!.Trim(),
            Voyage = request.Voyage!.Trim(),
            Port = request.Port!.Trim(),
            Berth = Blank(request.Berth),
            Stage = LoadingStages.Text(request.Stage),
            Product = request.Product!.Trim(),
            WhyGradesDiffer = Grades(request, batches) > 1 ? Blank(request.WhyGradesDiffer) : null,
            Reference = Blank(request.Reference),
            Remarks = Blank(request.Remarks),
            Tanks = [.. request.Tanks.Select(t => batches[t.Batch!].Line! with { Tank = t.Tank! })],
            Signature = new SignatureLine(signer.Name, RoleNames.Text(signer.Roles), IssueCargoCertificate.Meaning(request), now),
        };

    public static Cargo Row(Guid certificate, CargoContent content, CargoRequest request, IReadOnlyDictionary<string, CargoBatch> batches) => new()
    {
        CertificateId = certificate,
        Ship = content.Ship,
        Voyage = content.Voyage,
        Port = content.Port,
        Berth = content.Berth,
        Stage = request.Stage,
        Product = content.Product,
        WhyGradesDiffer = content.WhyGradesDiffer,
        Reference = content.Reference,
        Remarks = content.Remarks,
        Tanks =
        [
            .. request.Tanks.Select((tank, at) => new CargoTank
            {
                Id = Guid.CreateVersion7(content.IssuedAt),
                CertificateId = certificate,
                Place = at + 1,
                TankCode = tank.Tank!,
                BatchId = batches[tank.Batch!].Batch.Id,
                DecisionId = tank.Decision,
            }),
        ],
    };

    private static int Grades(CargoRequest request, IReadOnlyDictionary<string, CargoBatch> batches) =>
        request.Tanks.Select(t => batches[t.Batch!].Batch.GradeCode).Distinct().Count();

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
