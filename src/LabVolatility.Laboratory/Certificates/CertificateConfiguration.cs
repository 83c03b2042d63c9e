using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Certificates;

internal sealed class CertificateConfiguration : IEntityTypeConfiguration<Certificate>
{
    public void Configure(EntityTypeBuilder<Certificate> certificate)
    {
        certificate.ToTable("certificates", table => table.HasCheckConstraint("batch_with_its_decision", "(batch_id IS NULL) = (decision_id IS NULL)"));
        certificate.Property(c => c.Number).HasMaxLength(Lengths.Code);
        certificate.Property(c => c.ReplacesReason).HasMaxLength(Lengths.Note);
        certificate.Property(c => c.CheckCode).HasMaxLength(Lengths.Code);
        certificate.Property(c => c.Sha256).HasMaxLength(Lengths.Hash);
        certificate.HasIndex(c => new { c.Number, c.Revision }).IsUnique();
        certificate.HasIndex(c => c.CheckCode).IsUnique();
        certificate.HasIndex(c => c.DecisionId).IsUnique();
        certificate.HasIndex(c => c.IssuedAt);
        certificate.HasOne<Batch>().WithMany().HasForeignKey(c => c.BatchId);
        certificate.HasOne<Decision>().WithMany().HasForeignKey(c => c.DecisionId);
        certificate.HasOne<Certificate>().WithMany().HasForeignKey(c => c.ReplacesId);
        certificate.HasOne<Person>().WithMany().HasForeignKey(c => c.IssuedBy);
    }
}
