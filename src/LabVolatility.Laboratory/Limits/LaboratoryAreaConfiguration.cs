using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Limits;

internal sealed class LaboratoryAreaConfiguration : IEntityTypeConfiguration<LaboratoryArea>
{
    public void Configure(EntityTypeBuilder<LaboratoryArea> area)
    {
        area.ToTable("laboratory_areas");
        area.Ignore(a => a.Days);
        area.Property(a => a.Code).HasMaxLength(Lengths.Code);
        area.Property(a => a.Name).HasMaxLength(Lengths.Name);
        area.Property(a => a.Calendar).HasJson();
        area.Property(a => a.Source).HasMaxLength(Lengths.Note);
        area.HasIndex(a => a.Code);
        area.HasOne<Person>().WithMany().HasForeignKey(a => a.DraftedBy);
        area.HasOne<Person>().WithMany().HasForeignKey(a => a.ApprovedBy);
    }
}
