package gambrel.demo;

import java.util.Map;

/** The lists that the office wrote once: settings, people, prices. All of it is invented. */
final class OfficeFiles {
  private static final String SETTINGS =
      """
      name=Dry Tom Siding Boning Room
      address=3 Saleyard Lane; Yarrambeet
      contact=(02) 5550 0142; office@drytomsiding.example
      currency=AUD
      locale=en-AU
      language=en
      region=au
      unit=kg
      zone=Australia/Sydney
      paper=a4
      tax_name=GST
      tax_included=yes
      tax_number_name=ABN
      tax_number=00 000 000 000
      pay_by_days=14
      pay_to=Bank transfer to BSB 000-000; account 0000 0000
      rail=hot,cold
      rail.game=cold
      bins=weighed
      """;

  private static final String CUSTOMERS =
      """
      customer,name,address,email,language
      ashdown,Ruth Ashdown,Four Wells; Wells Road; Yarrambeet,ruth@ashdown.example,
      beale,Colin and Mae Beale,118 Merrigool Road; Merrigool,beales@merrigool.example,
      corrigan,Pat Corrigan,Lot 9 Tinpot Track; Yarrambeet,,
      dunmore,The Dunmore family,Dunmore Flat; Wattle Siding,dunmore@flat.example,
      eckhart,Lena Eckhart,27 Station Street; Yarrambeet,lena@eckhart.example,
      fenwick,Fenwick Bros,Ridge Road; Upper Merrigool,,
      gatley,Owen Gatley,4 Church Lane; Wattle Siding,owen@gatley.example,
      hirsch,Mira Hirsch,61 Ridge Road; Upper Merrigool,mira@hirsch.example,
      ivers,T. and S. Ivers,Ivers Hill; Merrigool,,
      jellicoe,Bram Jellicoe,2 Tinpot Track; Yarrambeet,bram@jellicoe.example,
      kettle,Nan Kettle,The Old Dairy; Wattle Siding,nan@kettle.example,
      lomax,Lomax Park School Farm,1 Lomax Avenue; Yarrambeet,farm@lomaxpark.example,
      mulvane,Des Mulvane,Back Creek; Merrigool,,
      nguyen,Linh Nguyễn-Hart,15 Orchard Row; Yarrambeet,linh@orchardrow.example,
      osei,Kofi Osei,8 Orchard Row; Yarrambeet,kofi@osei.example,fr
      oxley,Bev Oxley,Oxley Downs; Upper Merrigool,bev@oxley.example,
      quaife,Jonah Quaife,33 Wells Road; Yarrambeet,jonah@quaife.example,
      rennie,Isla Rennie,Rennie's Gate; Wattle Siding,isla@rennie.example,
      sutter,Max Sutter,5 Station Street; Yarrambeet,max@sutter.example,de
      tibbett,Hugh Tibbett,Lot 2 Ridge Road; Upper Merrigool,,
      tolley,Tolley Downs,Tolley Downs; Merrigool,office@tolley.example,
      wojcik,Zofia Wójcik,70 Merrigool Road; Merrigool,zofia@wojcik.example,
      """;

  private static final String SHARES =
      """
      body,customer,share
      B0702,beale,1/2
      B0702,corrigan,1/2
      B0705,eckhart,1/4
      B0705,fenwick,1/4
      B0705,gatley,1/4
      B0705,hirsch,1/4
      B0715,quaife,0.75
      B0715,rennie,0.25
      B0719,beale,50%
      B0719,corrigan,50%
      B0727,eckhart,1 of 2
      B0727,shop,1 of 2
      L0407,rennie,1/2
      L0407,tibbett,1/2
      P0205,jellicoe,1/2
      P0205,kettle,1/2
      """;

  private static final String CUTS =
      """
      species,item,parent,name,kind,count,unece
      beef,sausage-trim,carcase,Trim for sausages,trim,,
      pork,sausage-trim,carcase,Trim for sausages,trim,,
      veal,rump-trim,rump,Rump trimmings,meat,,
      veal,rump-fat,rump,Rump fat and gristle,fat,,
      veal,striploin-trim,striploin,Striploin trimmings,meat,,
      veal,striploin-fat,striploin,Striploin fat and gristle,fat,,
      """;

  private static final String SCALES =
      """
      scale,where,layout,unit,division,capacity,class
      rail,slaughter hall,,kg,0.2,600,III
      bench1,packing bench,,kg,0.005,15,III
      bench2,beside the block,,kg,0.02,60,III
      """;

  private static final String CHARGES =
      """
      charge,description,basis,price,minimum,free,species,class,item,body,hot_from,hot_to,tax_percent,from,to
      kill-beef,Slaughter,head,130.00,,,beef,,,,,,10,,2026-07-31
      kill-beef-aug,Slaughter,head,138.00,,,beef,,,,,,10,2026-08-01,
      kill-lamb,Slaughter,head,42.00,,,lamb,,,,,,10,,
      kill-goat,Slaughter,head,44.00,,,goat,,,,,,10,,
      kill-pork,Slaughter and scalding,head,72.00,,,pork,,,,,,10,,
      cut-beef-light,Cutting up to 200 kg hot,hot,1.95,,,beef,,,,,200,10,,
      cut-beef,Cutting from 200 kg hot,hot,1.80,,,beef,,,,200,,10,,
      cut-lamb,Cutting and packing,head,58.00,,,lamb,lamb,,,,,10,,
      cut-goat,Cutting and packing,head,62.00,,,goat,,,,,,10,,
      cut-pork,Cutting,cold,2.10,,,pork,,,,,,10,,
      cut-game,Cutting and packing,cold,2.80,25,,game,,,,,,10,,
      sausages-beef,Making sausages,tub,3.60,,,beef,,sausage-trim,,,,10,,
      sausages-pork,Making sausages,tub,3.60,,,pork,,sausage-trim,,,,10,,
      hams,Curing and smoking hams,tub,6.80,,,pork,,leg,,,,10,,
      bacon,Curing and smoking bacon,tub,7.20,,,pork,,belly,,,,10,,
      vacuum-beef,Vacuum packs,pack,0.55,,,beef,,,,,,10,,
      vacuum-pork,Vacuum packs,pack,0.55,,,pork,,,,,,10,,
      hanging,Hanging over ten days,day,4.00,,10,beef,,,,,,10,,
      sharing,Packing and paperwork,share,18.00,,,beef,,,,,,10,,
      delivery,Delivery to the Old Dairy,head,35.00,,,,,,B0708,,,10,,
      hide,Hide bought by the shop,head,-22.00,,,beef,,,,,,10,,
      """;

  private static final String VALUES =
      """
      item,value,from,to
      tenderloin,52.00,,
      striploin,38.00,,
      cube-roll,42.00,,
      short-loin,34.00,,
      rump,28.00,,
      topside,19.00,,
      silverside,18.00,,
      thick-flank,18.50,,
      blade,17.50,,
      chuck,17.00,,
      brisket,18.00,,
      shin-shank,15.00,,
      short-ribs,19.50,,
      rib-set,36.00,,
      thin-flank,16.00,,
      thick-skirt,18.00,,
      thin-skirt,18.00,,
      stewing-dice,17.50,,
      mince,14.00,,2026-08-31
      mince,14.50,2026-09-01,
      sausages,13.50,,
      leg,16.00,,
      loin,24.00,,
      rack,36.00,,
      shoulder,13.00,,
      belly,15.00,,
      chump,20.00,,
      neck,9.00,,
      breast-and-flap,8.50,,
      shank,12.00,,
      hock,7.00,,
      curry-pieces,15.00,,
      haunch,20.00,,
      bone,0.20,,
      fat,0.10,,
      """;

  private static final String PAYMENTS =
      """
      customer,body,date,amount,note
      ashdown,B0701,2026-07-06,200.00,deposit
      beale,B0702,2026-07-20,150.00,cash
      dunmore,B0703,2026-07-10,300.00,bank transfer
      ashdown,L0401,2026-07-17,100.00,paid in full
      lomax,L0402,2026-07-27,600.00,paid in full
      tibbett,L0403,2026-07-31,100.00,paid in full
      mulvane,L0404,2026-08-03,50.00,part
      corrigan,L0405,2026-08-12,42.00,paid in full
      osei,G0101,2026-08-06,106.00,paid in full
      jellicoe,B0707,2026-08-14,400.00,part
      kettle,B0708,2026-08-02,250.00,bank transfer
      nguyen,B0711,2026-08-03,200.00,deposit
      tolley,L0408,2026-08-28,300.00,paid in full
      tolley,B0716,2026-08-31,500.00,bank transfer
      gatley,B0721,2026-09-01,200.00,deposit
      ivers,B0724,2026-09-08,200.00,deposit
      fenwick,P0212,2026-09-22,100.00,deposit
      """;

  private static final String RELEASES =
      """
      body,by,on,reason,action
      B0713,Hetty,2026-08-19T08:40,a tub of bone was tipped out before it was weighed; seen by Noor,release
      """;

  private OfficeFiles() {}

  /** The files by name. */
  static Map<String, String> all() {
    return Map.of(
        "shop.properties", SETTINGS,
        "customers.csv", CUSTOMERS,
        "shares.csv", SHARES,
        "cuts.csv", CUTS,
        "scales.csv", SCALES,
        "charges.csv", CHARGES,
        "values.csv", VALUES,
        "payments.csv", PAYMENTS,
        "releases.csv", RELEASES);
  }
}
