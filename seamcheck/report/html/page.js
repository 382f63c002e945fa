"use strict";(()=>{var M0="http://www.w3.org/2000/svg";function tf(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return Mo(i,e),i}function Mo(i,t){for(let e of t)e!=null&&(Array.isArray(e)?Mo(i,e):i.append(e instanceof Node?e:String(e)))}function $t(i,t=null,...e){return tf(document.createElement(i),t,e)}function mt(i,t=null,...e){return tf(document.createElementNS(M0,i),t,e)}function _e(i){return document.getElementById(i)}function tn(i){for(;i.lastChild;)i.lastChild.remove()}var Q=i=>String(Math.round(i*100)/100);function sn(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function bo(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var ef=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;function xh(i){let t={};for(let e of i.querySelectorAll("[data-key]"))t[e.dataset.key]=e.value.trim();return t}var b0=i=>Object.values(i).some(t=>t!=="");function S0(i){let t=[...document.querySelectorAll("[data-answer]")].flatMap(s=>{let r=i.findings.find(a=>String(a.n)===s.dataset.answer),o=xh(s);return b0(o)?[{id:r.id,rule:r.rule,place:r.place??{},...o}]:[]}),e=[...document.querySelectorAll("[data-question]")].map(s=>({key:s.dataset.question,...xh(s)})),n=[...document.querySelectorAll("[data-role]")].map(s=>({role:s.dataset.role,...xh(s)}));return{document:"seamcheck-answers",schema_version:1,model:i.model,findings:t,questions:e.filter(s=>s.answer),approval:n.filter(s=>s.name||s.decision)}}function nf(i){_e("save-answers")?.addEventListener("click",()=>{let t=JSON.stringify(S0(i),null,1),e=document.createElement("a");e.href=URL.createObjectURL(new Blob([t],{type:"application/json"})),e.download=`${i.model.file.replace(/\.[^.]*$/,"").replace(/[^A-Za-z0-9._-]+/g,"-")||"review"}-answers.json`,e.click(),URL.revokeObjectURL(e.href),_e("saved").textContent=`Saved as ${e.download}.`})}var w0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function yh(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function br(i){let t=yh(i);if(!w0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}var Ra=class{offsets;segments;owner;slopes;shade;others;row=new Map;step;constructor(t){this.offsets=new Uint32Array(br(t.offsets)),this.segments=new Float32Array(br(t.segments)),this.owner=new Uint8Array(yh(t.owner)),this.slopes=t.slope?[...new Float32Array(br(t.slope))]:t.stations.map(()=>0),this.shade=(t.shade??[]).map(([e,n,s,r,o,a,l,c,h])=>({station:e,low:n,high:s,share:r,u:o,v:a,along:l,part:c,leans:h})),this.others=t.others??[],t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}slope(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.slopes[n]}return 0}shadeAt(t){return this.shade.filter(e=>e.station===t)}ownerOf(t){let e=this.others.indexOf(t);return e<0?void 0:e+2}partOf(t){return this.others[t-2]??null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function sf(i){return{part:i.part,positions:new Float32Array(br(i.positions)),triangles:new Uint32Array(br(i.triangles)),face:new Int32Array(br(i.face)),leftOut:i.left_out??0}}var rf=i=>E0(i);async function E0(i){let t=new Blob([yh(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var Ca=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":e}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=t.toFixed(this.payload.quantities[e]?.decimals??3);return Number(n)===0?n.replace("-",""):n}value(t,e){if(t==null||!Number.isFinite(t))return"not measured";if(e.startsWith("trap_open"))return t?"open":"closed";let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:l}=o;if(a<=l?s>=a-1e-6&&s<=l+1e-6:s>=a-1e-6||s<=l+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},Sr={"must-fix":"◆",attention:"▲",note:"○"},Pa=i=>i.length>1?`${i[0].n}+${i.length-1}`:String(i[0].n);function bs(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var Ia=class{constructor(t){this.payload=t;this.words=new Ca(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new Ra(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(sf),this.unpacked}};var T0="uplot",A0="u-hz",R0="u-vt",C0="u-title",P0="u-wrap",I0="u-under",L0="u-over",D0="u-axis",qs="u-off",N0="u-select",U0="u-cursor-x",F0="u-cursor-y",O0="u-cursor-pt",B0="u-legend",k0="u-live",z0="u-inline",V0="u-series",G0="u-marker",of="u-label",H0="u-value",wo="width",Eo="height";var af="bottom",wr="left",vh="right",Oh="#000",lf=Oh+"0",Mh="mousemove",cf="mousedown",bh="mouseup",hf="mouseenter",uf="mouseleave",df="dblclick",W0="resize",X0="scroll",ff="change",Fa="dppxchange",Bh="--",Ir=typeof window<"u",Ah=Ir?document:null,Tr=Ir?window:null,$0=Ir?navigator:null,Ee,La;function Rh(){let i=devicePixelRatio;Ee!=i&&(Ee=i,La&&Ph(ff,La,Rh),La=matchMedia(`(min-resolution: ${Ee-.001}dppx) and (max-resolution: ${Ee+.001}dppx)`),Ys(ff,La,Rh),Tr.dispatchEvent(new CustomEvent(Fa)))}function ni(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Ch(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function Ge(i,t,e){i.style[t]=e+"px"}function bi(i,t,e,n){let s=Ah.createElement(i);return t!=null&&ni(s,t),e?.insertBefore(s,n),s}function pi(i,t){return bi("div",i,t)}var pf=new WeakMap;function Gi(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=pf.get(i);r!=o&&(i.style.transform=r,pf.set(i,r),t<0||e<0||t>n||e>s?ni(i,qs):Ch(i,qs))}var mf=new WeakMap;function gf(i,t,e){let n=t+e,s=mf.get(i);n!=s&&(mf.set(i,n),i.style.background=t,i.style.borderColor=e)}var _f=new WeakMap;function xf(i,t,e,n){let s=t+""+e,r=_f.get(i);s!=r&&(_f.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var kh={passive:!0},q0={...kh,capture:!0};function Ys(i,t,e,n){t.addEventListener(i,e,n?q0:kh)}function Ph(i,t,e,n){t.removeEventListener(i,e,kh)}Ir&&Rh();function Si(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ii((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function $f(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var qf=i=>i!=null,Yf=i=>i!=null&&i>0,ka=$f(qf),Y0=$f(Yf);function Z0(i,t,e,n=0,s=!1){let r=s?Y0:ka,o=s?Yf:qf;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??Ue,l??-Ue]}function za(i,t,e,n){let s=Mf(i),r=Mf(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?ts:Zf,a=s==1?ii:mi,l=r==1?mi:ii,c=a(o(gn(i))),h=l(o(gn(t))),u=Ar(e,c),d=Ar(e,h);return e==10&&(c<0&&(u=Fe(u,-c)),h<0&&(d=Fe(d,-h))),n||e==2?(i=u*s,t=d*r):(i=Qf(i,u),t=Va(t,d)),[i,t]}function zh(i,t,e,n){let s=za(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Vh=.1,yf={mode:3,pad:Vh},Ao={pad:0,soft:null,mode:0},J0={min:Ao,max:Ao};function Oa(i,t,e,n){return Ga(e)?vf(i,t,e):(Ao.pad=e,Ao.soft=n?0:null,Ao.mode=n?3:0,vf(i,t,J0))}function Se(i,t){return i??t}function j0(i,t,e){for(t=Se(t,0),e=Se(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function vf(i,t,e){let n=e.min,s=e.max,r=Se(n.pad,0),o=Se(s.pad,0),a=Se(n.hard,-Ue),l=Se(s.hard,Ue),c=Se(n.soft,Ue),h=Se(s.soft,-Ue),u=Se(n.mode,0),d=Se(s.mode,0),f=t-i,g=ts(f),x=Wn(gn(i),gn(t)),p=ts(x),m=gn(p-g);(f<1e-24||m>10)&&(f=0,(i==0||t==0)&&(f=1e-24,u==2&&c!=Ue&&(r=0),d==2&&h!=-Ue&&(o=0)));let y=f||x||1e3,A=ts(y),M=Ar(10,ii(A)),R=y*(f==0?i==0?.1:1:r),w=Fe(Qf(i-R,M/10),24),_=i>=c&&(u==1||u==3&&w<=c||u==2&&w>=c)?c:Ue,b=Wn(a,w<_&&i>=_?_:wi(_,w)),F=y*(f==0?t==0?.1:1:o),I=Fe(Va(t+F,M/10),24),C=t<=h&&(d==1||d==3&&I>=h||d==2&&I<=h)?h:-Ue,V=wi(l,I>C&&t<=C?C:Wn(C,I));return b==V&&b==0&&(V=100),[b,V]}var K0=new Intl.NumberFormat(Ir?$0.language:"en-US"),Gh=i=>K0.format(i),si=Math,Ua=si.PI,gn=si.abs,ii=si.floor,mn=si.round,mi=si.ceil,wi=si.min,Wn=si.max,Ar=si.pow,Mf=si.sign,ts=si.log10,Zf=si.log2,Q0=(i,t=1)=>si.sinh(i)*t,Sh=(i,t=1)=>si.asinh(i/t),Ue=1/0;function bf(i){return(ts((i^i>>31)-(i>>31))|0)+1}function Ih(i,t,e){return wi(Wn(i,t),e)}function Jf(i){return typeof i=="function"}function ye(i){return Jf(i)?i:()=>i}var t_=()=>{},jf=i=>i,Kf=(i,t)=>t,e_=i=>null,Sf=i=>!0,wf=(i,t)=>i==t,n_=/\.\d*?(?=9{6,}|0{6,})/gm,Zs=i=>{if(ep(i)||ws.has(i))return i;let t=`${i}`,e=t.match(n_);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${Zs(s)}e${r}`}return Fe(i,n)};function Xs(i,t){return Zs(Fe(Zs(i/t))*t)}function Va(i,t){return Zs(mi(Zs(i/t))*t)}function Qf(i,t){return Zs(ii(Zs(i/t))*t)}function Fe(i,t=0){if(ep(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return mn(n)/e}var ws=new Map;function tp(i){return((""+i).split(".")[1]||"").length}function Co(i,t,e,n){let s=[],r=n.map(tp);for(let o=t;o<e;o++){let a=gn(o),l=Fe(Ar(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,u=(o>=0?0:a)+(o>=r[c]?0:r[c]),d=i==10?h:Fe(h,u);s.push(d),ws.set(d,u)}}return s}var Ro={},Hh=[],Rr=[null,null],Ss=Array.isArray,ep=Number.isInteger,i_=i=>i===void 0;function Ef(i){return typeof i=="string"}function Ga(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function s_(i){return i!=null&&typeof i=="object"}var r_=Object.getPrototypeOf(Uint8Array),np="__proto__";function Cr(i,t=Ga){let e;if(Ss(i)){let n=i.find(s=>s!=null);if(Ss(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Cr(i[s],t)}else e=i.slice()}else if(i instanceof r_)e=i.slice();else if(t(i)){e={};for(let n in i)n!=np&&(e[n]=Cr(i[n],t))}else e=i;return e}function un(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=np&&(Ga(i[s])?un(i[s],Cr(n[s])):i[s]=Cr(n[s]))}return i}var o_=0,a_=1,l_=2;function c_(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function h_(i,t){if(f_(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return p_(o[0])||(o=d_(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],u=Array(s).fill(void 0),d=t?t[o][c]:a_,f=[];for(let g=0;g<h.length;g++){let x=h[g],p=r.get(l[g]);x===null?d!=o_&&(u[p]=x,d==l_&&f.push(p)):u[p]=x}c_(u,f,s),n.push(u)}}return n}var u_=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function d_(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function f_(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function p_(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Wn(1,ii((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var ip=["January","February","March","April","May","June","July","August","September","October","November","December"],sp=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function rp(i){return i.slice(0,3)}var m_=sp.map(rp),g_=ip.map(rp),__={MMMM:ip,MMM:g_,WWWW:sp,WWW:m_};function So(i){return(i<10?"0":"")+i}function x_(i){return(i<10?"00":i<100?"0":"")+i}var y_={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>So(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>So(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>So(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>So(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>So(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>x_(i.getMilliseconds())};function Wh(i,t){t=t||__;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?y_[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var v_=new Intl.DateTimeFormat().resolvedOptions().timeZone;function M_(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==v_?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var op=i=>i%1==0,Ba=[1,2,2.5,5],b_=Co(10,-32,0,Ba),ap=Co(10,0,32,Ba),S_=ap.filter(op),$s=b_.concat(ap),Xh=`
`,lp="{YYYY}",Tf=Xh+lp,cp="{M}/{D}",To=Xh+cp,Da=To+"/{YY}",hp="{aa}",w_="{h}:{mm}",Er=w_+hp,Af=Xh+Er,Rf=":{ss}",Ae=null;function up(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Co(10,0,3,Ba).filter(op):Co(10,-3,0,Ba)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,lp,Ae,Ae,Ae,Ae,Ae,Ae,1],[s*28,"{MMM}",Tf,Ae,Ae,Ae,Ae,Ae,1],[s,cp,Tf,Ae,Ae,Ae,Ae,Ae,1],[n,"{h}"+hp,Da,Ae,To,Ae,Ae,Ae,1],[e,Er,Da,Ae,To,Ae,Ae,Ae,1],[t,Rf,Da+" "+Er,Ae,To+" "+Er,Ae,Af,Ae,1],[i,Rf+".{fff}",Da+" "+Er,Ae,To+" "+Er,Ae,Af,Ae,1]];function h(u){return(d,f,g,x,p,m)=>{let y=[],A=p>=o,M=p>=r&&p<o,R=u(g),w=Fe(R*i,3),_=wh(R.getFullYear(),A?0:R.getMonth(),M||A?1:R.getDate()),b=Fe(_*i,3);if(M||A){let F=M?p/r:0,I=A?p/o:0,C=w==b?w:Fe(wh(_.getFullYear()+I,_.getMonth()+F,1)*i,3),V=new Date(mn(C/i)),U=V.getFullYear(),P=V.getMonth();for(let z=0;C<=x;z++){let $=wh(U+I*z,P+F*z,1),O=$-u(Fe($*i,3));C=Fe((+$+O)*i,3),C<=x&&y.push(C)}}else{let F=p>=s?s:p,I=ii(g)-ii(w),C=b+I+Va(w-b,F);y.push(C);let V=u(C),U=V.getHours()+V.getMinutes()/e+V.getSeconds()/n,P=p/n,z=d.axes[f]._space,$=m/z;for(;C=Fe(C+p,i==1?0:3),!(C>x);)if(P>1){let O=ii(Fe(U+P,6))%24,q=u(C).getHours()-O;q>1&&(q=-1),C-=q*n,U=(U+P)%24;let et=y[y.length-1];Fe((C-et)/p,3)*$>=.7&&y.push(C)}else y.push(C)}return y}}return[l,c,h]}var[E_,T_,A_]=up(1),[R_,C_,P_]=up(.001);Co(2,-53,53,[1]);function Cf(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function Pf(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,h,u,d,f;return n.map(g=>{let x=i(g),p=x.getFullYear(),m=x.getMonth(),y=x.getDate(),A=x.getHours(),M=x.getMinutes(),R=x.getSeconds(),w=p!=l&&a[2]||m!=c&&a[3]||y!=h&&a[4]||A!=u&&a[5]||M!=d&&a[6]||R!=f&&a[7]||a[1];return l=p,c=m,h=y,u=A,d=M,f=R,w(x)})}}function I_(i,t){let e=Wh(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function wh(i,t,e){return new Date(i,t,e)}function If(i,t){return t(i)}var L_="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Lf(i,t){return(e,n,s,r)=>r==null?Bh:t(i(n))}function D_(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function N_(i,t){return i.series[t].fill(i,t)}var U_={show:!0,live:!0,isolate:!1,mount:t_,markers:{show:!0,width:2,stroke:D_,fill:N_,dash:"solid"},idx:null,idxs:null,values:[]};function F_(i,t){let e=i.cursor.points,n=pi(),s=e.size(i,t);Ge(n,wo,s),Ge(n,Eo,s);let r=s/-2;Ge(n,"marginLeft",r),Ge(n,"marginTop",r);let o=e.width(i,t,s);return o&&Ge(n,"borderWidth",o),n}function O_(i,t){let e=i.series[t].points;return e._fill||e._stroke}function B_(i,t){let e=i.series[t].points;return e._stroke||e._fill}function k_(i,t){return i.series[t].points.size}var Eh=[0,0];function z_(i,t,e){return Eh[0]=t,Eh[1]=e,Eh}function Na(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Th(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var V_={show:!0,x:!0,y:!0,lock:!1,move:z_,points:{one:!1,show:F_,size:k_,width:0,stroke:B_,fill:O_},bind:{mousedown:Na,mouseup:Na,click:Na,dblclick:Na,mousemove:Th,mouseleave:Th,mouseenter:Th},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},dp={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},$h=un({},dp,{filter:Kf}),fp=un({},$h,{size:10}),pp=un({},dp,{show:!1}),qh='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',mp="bold "+qh,gp=1.5,Df={show:!0,scale:"x",stroke:Oh,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:mp,side:2,grid:$h,ticks:fp,border:pp,font:qh,lineGap:gp,rotate:0},G_="Value",H_="Time",Nf={show:!0,scale:"x",auto:!1,sorted:1,min:Ue,max:-Ue,idxs:[]};function W_(i,t,e,n,s){return t.map(r=>r==null?"":Gh(r))}function X_(i,t,e,n,s,r,o){let a=[],l=ws.get(s)||0;e=o?e:Fe(Va(e,s),l);for(let c=e;c<=n;c=Fe(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Lh(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?ts:Zf,h=ii(c(e));s=Ar(l,h),l==10&&(s=$s[Si(s,$s)]);let u=e,d=s*l;l==10&&(d=$s[Si(d,$s)]);do a.push(u),u=u+s,l==10&&!ws.has(u)&&(u=Fe(u,ws.get(s))),u>=d&&(s=u,d=s*l,l==10&&(d=$s[Si(d,$s)]));while(u<=n);return a}function $_(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Lh(i,t,Wn(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?Lh(i,t,Wn(l,-n),-e,s):[l]).reverse().map(d=>-d).concat(h,c)}var _p=/./,q_=/[12357]/,Y_=/[125]/,Uf=/1/,Dh=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function Z_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),u=l(9,o)-h>=c?_p:l(7,o)-h>=c?q_:l(5,o)-h>=c?Y_:Uf;if(u==Uf){let d=gn(l(1,o)-h);if(d<c)return Dh(t.slice().reverse(),a.distr,u,mi(c/d)).reverse()}return Dh(t,a.distr,u,1)}function J_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=gn(l(1,o)-l(2,o));return c<a?Dh(t.slice().reverse(),3,_p,mi(a/c)).reverse():t}function j_(i,t,e,n){return n==null?Bh:t==null?"":Gh(t)}var Ff={show:!0,scale:"y",stroke:Oh,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:mp,side:3,grid:$h,ticks:fp,border:pp,font:qh,lineGap:gp,rotate:0};function K_(i,t){let e=3+(i||1)*2;return Fe(e*t,3)}function Q_(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=gn(o-r),l=i.series[t],c=a/(l.points.space*Ee);return n[1]-n[0]<=c}var Of={scale:null,auto:!0,sorted:0,min:Ue,max:-Ue},xp=(i,t,e,n,s)=>s,Bf={show:!0,auto:!0,sorted:0,gaps:xp,alpha:1,facets:[un({},Of,{scale:"x"}),un({},Of,{scale:"y"})]},kf={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:xp,alpha:1,points:{show:Q_,filter:null},values:null,min:Ue,max:-Ue,idxs:[],path:null,clip:null};function tx(i,t,e,n,s){return e/10}var yp={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},ex=un({},yp,{time:!1,ori:1}),zf={};function vp(i,t){let e=zf[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(zf[i]=e)),e}var Pr=1,Nh=2;function Js(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],u=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,x=a.height,p=i.valToPosH,m=i.valToPosV;return h.ori==0?e(s,l,c,h,u,p,m,d,f,g,x,Wa,Lr,$a,bp,wp):e(s,l,c,h,u,m,p,f,d,x,g,Xa,Dr,Jh,Sp,Ep)}function Yh(i,t){let e=0,n=0,s=Se(i.bands,Hh);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function nx(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function es(i,t,e,n,s,r){return Js(i,t,(o,a,l,c,h,u,d,f,g,x,p)=>{let m=o.pxRound,y=c.dir*(c.ori==0?1:-1),A=c.ori==0?Lr:Dr,M,R;y==1?(M=e,R=n):(M=n,R=e);let w=m(u(a[M],c,x,f)),_=m(d(l[M],h,p,g)),b=m(u(a[R],c,x,f)),F=m(d(r==1?h.max:h.min,h,p,g)),I=new Path2D(s);return A(I,b,F),A(I,w,F),A(I,w,_),I})}function Ha(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?$a:Jh,l=e;for(let u=0;u<i.length;u++){let d=i[u];if(d[1]>d[0]){let f=d[0]-l;f>0&&a(o,l,n,f,n+r),l=d[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function ix(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function Zh(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let u=c,d=c;if(s==1)for(;++c<=n&&t[c]===null;)d=c;else for(;--c>=e&&t[c]===null;)d=c;let f=r(i[u]),g=d==u?f:r(i[d]),x=u-s;f=o<=0&&x>=0&&x<l?r(i[x]):f;let m=d+s;g=o>=0&&m>=0&&m<l?r(i[m]):g,g>=f&&a.push([f,g])}return a}function Vf(i){return i==0?jf:i==1?mn:t=>Xs(t,i)}function Mp(i){let t=i==0?Wa:Xa,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=wi(c,a/2,l/2),h=wi(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var Wa=(i,t,e)=>{i.moveTo(t,e)},Xa=(i,t,e)=>{i.moveTo(e,t)},Lr=(i,t,e)=>{i.lineTo(t,e)},Dr=(i,t,e)=>{i.lineTo(e,t)},$a=Mp(0),Jh=Mp(1),bp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},Sp=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},wp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},Ep=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function Tp(i){return(t,e,n,s,r)=>Js(t,e,(o,a,l,c,h,u,d,f,g,x,p)=>{let{pxRound:m,points:y}=o,A,M;c.ori==0?(A=Wa,M=bp):(A=Xa,M=Sp);let R=Fe(y.width*Ee,3),w=(y.size-y.width)/2*Ee,_=Fe(w*2,3),b=new Path2D,F=new Path2D,{left:I,top:C,width:V,height:U}=t.bbox;$a(F,I-_,C-_,V+_*2,U+_*2);let P=z=>{if(l[z]!=null){let $=m(u(a[z],c,x,f)),O=m(d(l[z],h,p,g));A(b,$+w,O),M(b,$,O,w,0,Ua*2)}};if(r)r.forEach(P);else for(let z=n;z<=s;z++)P(z);return{stroke:R>0?b:null,fill:b,clip:F,flags:Pr|Nh}})}function Ap(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var sx=Ap(Lr),rx=Ap(Dr);function Rp(i){let t=Se(i?.alignGaps,0);return(e,n,s,r)=>Js(e,n,(o,a,l,c,h,u,d,f,g,x,p)=>{[s,r]=ka(l,s,r);let m=o.pxRound,y=U=>m(u(U,c,x,f)),A=U=>m(d(U,h,p,g)),M,R;c.ori==0?(M=Lr,R=sx):(M=Dr,R=rx);let w=c.dir*(c.ori==0?1:-1),_={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Pr},b=_.stroke,F=!1;if(r-s>=x*4){let U=ut=>e.posToVal(ut,c.key,!0),P=null,z=null,$,O,st,W=y(a[w==1?s:r]),q=y(a[s]),et=y(a[r]),ht=U(w==1?q+1:et-1);for(let ut=w==1?s:r;ut>=s&&ut<=r;ut+=w){let K=a[ut],lt=(w==1?K<ht:K>ht)?W:y(K),pt=l[ut];lt==W?pt!=null?(O=pt,P==null?(M(b,lt,A(O)),$=P=z=O):O<P?P=O:O>z&&(z=O)):pt===null&&(F=!0):(P!=null&&R(b,W,A(P),A(z),A($),A(O)),pt!=null?(O=pt,M(b,lt,A(O)),P=z=$=O):(P=z=null,pt===null&&(F=!0)),W=lt,ht=U(W+w))}P!=null&&P!=z&&st!=W&&R(b,W,A(P),A(z),A($),A(O))}else for(let U=w==1?s:r;U>=s&&U<=r;U+=w){let P=l[U];P===null?F=!0:P!=null&&M(b,y(a[U]),A(P))}let[C,V]=Yh(e,n);if(o.fill!=null||C!=0){let U=_.fill=new Path2D(b),P=o.fillTo(e,n,o.min,o.max,C),z=A(P),$=y(a[s]),O=y(a[r]);w==-1&&([O,$]=[$,O]),M(U,O,z),M(U,$,z)}if(!o.spanGaps){let U=[];F&&U.push(...Zh(a,l,s,r,w,y,t)),_.gaps=U=o.gaps(e,n,s,r,U),_.clip=Ha(U,c.ori,f,g,x,p)}return V!=0&&(_.band=V==2?[es(e,n,s,r,b,-1),es(e,n,s,r,b,1)]:es(e,n,s,r,b,V)),_})}function ox(i){let t=Se(i.align,1),e=Se(i.ascDesc,!1),n=Se(i.alignGaps,0),s=Se(i.extend,!1);return(r,o,a,l)=>Js(r,o,(c,h,u,d,f,g,x,p,m,y,A)=>{[a,l]=ka(u,a,l);let M=c.pxRound,{left:R,width:w}=r.bbox,_=q=>M(g(q,d,y,p)),b=q=>M(x(q,f,A,m)),F=d.ori==0?Lr:Dr,I={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Pr},C=I.stroke,V=d.dir*(d.ori==0?1:-1),U=b(u[V==1?a:l]),P=_(h[V==1?a:l]),z=P,$=P;s&&t==-1&&($=R,F(C,$,U)),F(C,P,U);for(let q=V==1?a:l;q>=a&&q<=l;q+=V){let et=u[q];if(et==null)continue;let ht=_(h[q]),ut=b(et);t==1?F(C,ht,U):F(C,z,ut),F(C,ht,ut),U=ut,z=ht}let O=z;s&&t==1&&(O=R+w,F(C,O,U));let[st,W]=Yh(r,o);if(c.fill!=null||st!=0){let q=I.fill=new Path2D(C),et=c.fillTo(r,o,c.min,c.max,st),ht=b(et);F(q,O,ht),F(q,$,ht)}if(!c.spanGaps){let q=[];q.push(...Zh(h,u,a,l,V,_,n));let et=c.width*Ee/2,ht=e||t==1?et:-et,ut=e||t==-1?-et:et;q.forEach(K=>{K[0]+=ht,K[1]+=ut}),I.gaps=q=c.gaps(r,o,a,l,q),I.clip=Ha(q,d.ori,p,m,y,A)}return W!=0&&(I.band=W==2?[es(r,o,a,l,C,-1),es(r,o,a,l,C,1)]:es(r,o,a,l,C,W)),I})}function Gf(i,t,e,n,s,r,o=Ue){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=gn(i[l]-i[a]);h<c&&(c=h,o=gn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function ax(i){i=i||Ro;let t=Se(i.size,[.6,Ue,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=ye(s),o=1-t[0],a=Se(t[1],Ue),l=Se(t[2],1),c=Se(i.disp,Ro),h=Se(i.each,f=>{}),{fill:u,stroke:d}=c;return(f,g,x,p)=>Js(f,g,(m,y,A,M,R,w,_,b,F,I,C)=>{let V=m.pxRound,U=e,P=n*Ee,z=a*Ee,$=l*Ee,O,st;M.ori==0?[O,st]=r(f,g):[st,O]=r(f,g);let W=M.dir*(M.ori==0?1:-1),q=M.ori==0?$a:Jh,et=M.ori==0?h:(Pt,Zt,ae,Et,Ne,Gt,qt)=>{h(Pt,Zt,ae,Ne,Et,qt,Gt)},ht=Se(f.bands,Hh).find(Pt=>Pt.series[0]==g),ut=ht!=null?ht.dir:0,K=m.fillTo(f,g,m.min,m.max,ut),gt=V(_(K,R,C,F)),lt,pt,xt,Ht=I,jt=V(m.width*Ee),Vt=!1,de=null,ce=null,se=null,Xe=null;u!=null&&(jt==0||d!=null)&&(Vt=!0,de=u.values(f,g,x,p),ce=new Map,new Set(de).forEach(Pt=>{Pt!=null&&ce.set(Pt,new Path2D)}),jt>0&&(se=d.values(f,g,x,p),Xe=new Map,new Set(se).forEach(Pt=>{Pt!=null&&Xe.set(Pt,new Path2D)})));let{x0:Oe,size:rn}=c;if(Oe!=null&&rn!=null){U=1,y=Oe.values(f,g,x,p),Oe.unit==2&&(y=y.map(ae=>f.posToVal(b+ae*I,M.key,!0)));let Pt=rn.values(f,g,x,p);rn.unit==2?pt=Pt[0]*I:pt=w(Pt[0],M,I,b)-w(0,M,I,b),Ht=Gf(y,A,w,M,I,b,Ht),xt=Ht-pt+P}else Ht=Gf(y,A,w,M,I,b,Ht),xt=Ht*o+P,pt=Ht-xt;xt<1&&(xt=0),jt>=pt/2&&(jt=0),xt<5&&(V=jf);let Le=xt>0,vn=Ht-xt-(Le?jt:0);pt=V(Ih(vn,$,z)),lt=(U==0?pt/2:U==W?0:pt)-U*W*((U==0?P/2:0)+(Le?jt/2:0));let Me={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},fn=Vt?null:new Path2D,Ze=null;if(ht!=null)Ze=f.data[ht.series[1]];else{let{y0:Pt,y1:Zt}=c;Pt!=null&&Zt!=null&&(A=Zt.values(f,g,x,p),Ze=Pt.values(f,g,x,p))}let on=O*pt,k=st*pt;for(let Pt=W==1?x:p;Pt>=x&&Pt<=p;Pt+=W){let Zt=A[Pt];if(Zt==null)continue;if(Ze!=null){let Y=Ze[Pt]??0;if(Zt-Y==0)continue;gt=_(Y,R,C,F)}let ae=M.distr!=2||c!=null?y[Pt]:Pt,Et=w(ae,M,I,b),Ne=_(Se(Zt,K),R,C,F),Gt=V(Et-lt),qt=V(Wn(Ne,gt)),L=V(wi(Ne,gt)),S=qt-L;if(Zt!=null){let Y=Zt<0?k:on,ft=Zt<0?on:k;Vt?(jt>0&&se[Pt]!=null&&q(Xe.get(se[Pt]),Gt,L+ii(jt/2),pt,Wn(0,S-jt),Y,ft),de[Pt]!=null&&q(ce.get(de[Pt]),Gt,L+ii(jt/2),pt,Wn(0,S-jt),Y,ft)):q(fn,Gt,L+ii(jt/2),pt,Wn(0,S-jt),Y,ft),et(f,g,Pt,Gt-jt/2,L,pt+jt,S)}}return jt>0?Me.stroke=Vt?Xe:fn:Vt||(Me._fill=m.width==0?m._fill:m._stroke??m._fill,Me.width=0),Me.fill=Vt?ce:fn,Me})}function lx(i,t){let e=Se(t?.alignGaps,0);return(n,s,r,o)=>Js(n,s,(a,l,c,h,u,d,f,g,x,p,m)=>{[r,o]=ka(c,r,o);let y=a.pxRound,A=O=>y(d(O,h,p,g)),M=O=>y(f(O,u,m,x)),R,w,_;h.ori==0?(R=Wa,_=Lr,w=wp):(R=Xa,_=Dr,w=Ep);let b=h.dir*(h.ori==0?1:-1),F=A(l[b==1?r:o]),I=F,C=[],V=[];for(let O=b==1?r:o;O>=r&&O<=o;O+=b)if(c[O]!=null){let W=l[O],q=A(W);C.push(I=q),V.push(M(c[O]))}let U={stroke:i(C,V,R,_,w,y),fill:null,clip:null,band:null,gaps:null,flags:Pr},P=U.stroke,[z,$]=Yh(n,s);if(a.fill!=null||z!=0){let O=U.fill=new Path2D(P),st=a.fillTo(n,s,a.min,a.max,z),W=M(st);_(O,I,W),_(O,F,W)}if(!a.spanGaps){let O=[];O.push(...Zh(l,c,r,o,b,A,e)),U.gaps=O=a.gaps(n,s,r,o,O),U.clip=Ha(O,h.ori,g,x,p,m)}return $!=0&&(U.band=$==2?[es(n,s,r,o,P,-1),es(n,s,r,o,P,1)]:es(n,s,r,o,P,$)),U})}function cx(i){return lx(hx,i)}function hx(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),u=Array(o-1);for(let d=0;d<o-1;d++)h[d]=t[d+1]-t[d],u[d]=i[d+1]-i[d],c[d]=h[d]/u[d];l[0]=c[0];for(let d=1;d<o-1;d++)c[d]===0||c[d-1]===0||c[d-1]>0!=c[d]>0?l[d]=0:(l[d]=3*(u[d-1]+u[d])/((2*u[d]+u[d-1])/c[d-1]+(u[d]+2*u[d-1])/c[d]),isFinite(l[d])||(l[d]=0));l[o-1]=c[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+u[d]/3,t[d]+l[d]*u[d]/3,i[d+1]-u[d]/3,t[d+1]-l[d+1]*u[d]/3,i[d+1],t[d+1])}return a}var Uh=new Set;function Hf(){for(let i of Uh)i.syncRect(!0)}Ir&&(Ys(W0,Tr,Hf),Ys(X0,Tr,Hf,!0),Ys(Fa,Tr,()=>{En.pxRatio=Ee}));var ux=Rp(),dx=Tp();function Wf(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Fh(r,o,t,e))}function fx(i,t){return i.map((e,n)=>n==0?{}:un({},t,e))}function Fh(i,t,e,n){return un({},t==0?e:n,i)}function Cp(i,t,e){return t==null?Rr:[t,e]}var px=Cp;function mx(i,t,e){return t==null?Rr:Oa(t,e,Vh,!0)}function Pp(i,t,e,n){return t==null?Rr:za(t,e,i.scales[n].log,!1)}var gx=Pp;function Ip(i,t,e,n){return t==null?Rr:zh(t,e,i.scales[n].log,!1)}var _x=Ip;function xx(i,t,e,n,s){let r=Wn(bf(i),bf(t)),o=t-i,a=Si(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?ws.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function Xf(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=mn((e=+s)*Ee))+"px"),[i,t,e]}function yx(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=Fe(t[2]*Ee,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function En(i,t,e){let n={mode:Se(i.mode,1)},s=n.mode;function r(v,E,D,N){let H=E.valToPct(v);return N+D*(E.dir==-1?1-H:H)}function o(v,E,D,N){let H=E.valToPct(v);return N+D*(E.dir==-1?H:1-H)}function a(v,E,D,N){return E.ori==0?r(v,E,D,N):o(v,E,D,N)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=pi(T0);if(i.id!=null&&(c.id=i.id),ni(c,i.class),i.title){let v=pi(C0,c);v.textContent=i.title}let h=bi("canvas"),u=n.ctx=h.getContext("2d"),d=pi(P0,c);Ys("click",d,v=>{v.target===g&&(ke!=_r||$e!=xr)&&Cn.click(n,v)},!0);let f=n.under=pi(I0,d);d.appendChild(h);let g=n.over=pi(L0,d);i=Cr(i);let x=+Se(i.pxAlign,1),p=Vf(x);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let m=i.ms||.001,y=n.series=s==1?Wf(i.series||[],Nf,kf,!1):fx(i.series||[null],Bf),A=n.axes=Wf(i.axes||[],Df,Ff,!0),M=n.scales={},R=n.bands=i.bands||[];R.forEach(v=>{v.fill=ye(v.fill||null),v.dir=Se(v.dir,-1)});let w=s==2?y[1].facets[0].scale:y[0].scale,_={axes:Ki,series:pe},b=(i.drawOrder||["axes","series"]).map(v=>_[v]);function F(v){let E=v.distr==3?D=>ts(D>0?D:v.clamp(n,D,v.min,v.max,v.key)):v.distr==4?D=>Sh(D,v.asinh):v.distr==100?D=>v.fwd(D):D=>D;return D=>{let N=E(D),{_min:H,_max:j}=v,ct=j-H;return(N-H)/ct}}function I(v){let E=M[v];if(E==null){let D=(i.scales||Ro)[v]||Ro;if(D.from!=null){I(D.from);let N=un({},M[D.from],D,{key:v});N.valToPct=F(N),M[v]=N}else{E=M[v]=un({},v==w?yp:ex,D),E.key=v;let N=E.time,H=E.range,j=Ss(H);if((v!=w||s==2&&!N)&&(j&&(H[0]==null||H[1]==null)&&(H={min:H[0]==null?yf:{mode:1,hard:H[0],soft:H[0]},max:H[1]==null?yf:{mode:1,hard:H[1],soft:H[1]}},j=!1),!j&&Ga(H))){let ct=H;H=(_t,St,Nt)=>St==null?Rr:Oa(St,Nt,ct)}E.range=ye(H||(N?px:v==w?E.distr==3?gx:E.distr==4?_x:Cp:E.distr==3?Pp:E.distr==4?Ip:mx)),E.auto=ye(j?!1:E.auto),E.clamp=ye(E.clamp||tx),E._min=E._max=null,E.valToPct=F(E)}}}I("x"),I("y"),s==1&&y.forEach(v=>{I(v.scale)}),A.forEach(v=>{I(v.scale)});for(let v in i.scales)I(v);let C=M[w],V=C.distr,U,P;C.ori==0?(ni(c,A0),U=r,P=o):(ni(c,R0),U=o,P=r);let z={};for(let v in M){let E=M[v];(E.min!=null||E.max!=null)&&(z[v]={min:E.min,max:E.max},E.min=E.max=null)}let $=i.tzDate||(v=>new Date(mn(v/m))),O=i.fmtDate||Wh,st=m==1?A_($):P_($),W=Pf($,Cf(m==1?T_:C_,O)),q=Lf($,If(L_,O)),et=[],ht=n.legend=un({},U_,i.legend),ut=n.cursor=un({},V_,{drag:{y:s==2}},i.cursor),K=ht.show,gt=ut.show,lt=ht.markers;ht.idxs=et,lt.width=ye(lt.width),lt.dash=ye(lt.dash),lt.stroke=ye(lt.stroke),lt.fill=ye(lt.fill);let pt,xt,Ht,jt=[],Vt=[],de,ce=!1,se={};if(ht.live){let v=y[1]?y[1].values:null;ce=v!=null,de=ce?v(n,1,0):{_:0};for(let E in de)se[E]=Bh}if(K)if(pt=bi("table",B0,c),Ht=bi("tbody",null,pt),ht.mount(n,pt),ce){xt=bi("thead",null,pt,Ht);let v=bi("tr",null,xt);bi("th",null,v);for(var Xe in de)bi("th",of,v).textContent=Xe}else ni(pt,z0),ht.live&&ni(pt,k0);let Oe={show:!0},rn={show:!1};function Le(v,E){if(E==0&&(ce||!ht.live||s==2))return Rr;let D=[],N=bi("tr",V0,Ht,Ht.childNodes[E]);ni(N,v.class),v.show||ni(N,qs);let H=bi("th",null,N);if(lt.show){let _t=pi(G0,H);if(E>0){let St=lt.width(n,E);St&&(_t.style.border=St+"px "+lt.dash(n,E)+" "+lt.stroke(n,E)),_t.style.background=lt.fill(n,E)}}let j=pi(of,H);v.label instanceof HTMLElement?j.appendChild(v.label):j.textContent=v.label,E>0&&(lt.show||(j.style.color=v.width>0?lt.stroke(n,E):lt.fill(n,E)),Me("click",H,_t=>{if(ut._lock)return;Kt(_t);let St=y.indexOf(v);if((_t.ctrlKey||_t.metaKey)!=ht.isolate){let Nt=y.some((Ut,Ot)=>Ot>0&&Ot!=St&&Ut.show);y.forEach((Ut,Ot)=>{Ot>0&&Bi(Ot,Nt?Ot==St?Oe:rn:Oe,!0,hn.setSeries)})}else Bi(St,{show:!v.show},!0,hn.setSeries)},!1),Qt&&Me(hf,H,_t=>{ut._lock||(Kt(_t),Bi(y.indexOf(v),vr,!0,hn.setSeries))},!1));for(var ct in de){let _t=bi("td",H0,N);_t.textContent="--",D.push(_t)}return[N,D]}let vn=new Map;function Me(v,E,D,N=!0){let H=vn.get(E)||{},j=ut.bind[v](n,E,D,N);j&&(Ys(v,E,H[v]=j),vn.set(E,H))}function fn(v,E,D){let N=vn.get(E)||{};for(let H in N)(v==null||H==v)&&(Ph(H,E,N[H]),delete N[H]);v==null&&vn.delete(E)}let Ze=0,on=0,k=0,Pt=0,Zt=0,ae=0,Et=Zt,Ne=ae,Gt=k,qt=Pt,L=0,S=0,Y=0,ft=0;n.bbox={};let at=!1,Mt=!1,bt=!1,nt=!1,rt=!1,yt=!1;function B(v,E,D){(D||v!=n.width||E!=n.height)&&ot(v,E),he(!1),bt=!0,Mt=!0,Ln()}function ot(v,E){n.width=Ze=k=v,n.height=on=Pt=E,Zt=ae=0,wt(),Wt();let D=n.bbox;L=D.left=Xs(Zt*Ee,.5),S=D.top=Xs(ae*Ee,.5),Y=D.width=Xs(k*Ee,.5),ft=D.height=Xs(Pt*Ee,.5)}let it=3;function Tt(){let v=!1,E=0;for(;!v;){E++;let D=pr(E),N=Oi(E);v=E==it||D&&N,v||(ot(n.width,n.height),Mt=!0)}}function vt({width:v,height:E}){B(v,E)}n.setSize=vt;function wt(){let v=!1,E=!1,D=!1,N=!1;A.forEach((H,j)=>{if(H.show&&H._show){let{side:ct,_size:_t}=H,St=ct%2,Nt=H.label!=null?H.labelSize:0,Ut=_t+Nt;Ut>0&&(St?(k-=Ut,ct==3?(Zt+=Ut,N=!0):D=!0):(Pt-=Ut,ct==0?(ae+=Ut,v=!0):E=!0))}}),Ui[0]=v,Ui[1]=D,Ui[2]=E,Ui[3]=N,k-=yi[1]+yi[3],Zt+=yi[3],Pt-=yi[2]+yi[0],ae+=yi[0]}function Wt(){let v=Zt+k,E=ae+Pt,D=Zt,N=ae;function H(j,ct){switch(j){case 1:return v+=ct,v-ct;case 2:return E+=ct,E-ct;case 3:return D-=ct,D+ct;case 0:return N-=ct,N+ct}}A.forEach((j,ct)=>{if(j.show&&j._show){let _t=j.side;j._pos=H(_t,j._size),j.label!=null&&(j._lpos=H(_t,j.labelSize))}})}if(ut.dataIdx==null){let v=ut.hover,E=v.skip=new Set(v.skip??[]);E.add(void 0);let D=v.prox=ye(v.prox),N=v.bias??=0;ut.dataIdx=(H,j,ct,_t)=>{if(j==0)return ct;let St=ct,Nt=D(H,j,ct,_t)??Ue,Ut=Nt>=0&&Nt<Ue,Ot=C.ori==0?k:Pt,re=ut.left,we=t[0],be=t[j];if(E.has(be[ct])){St=null;let ge=null,Jt=null,Xt;if(N==0||N==-1)for(Xt=ct;ge==null&&Xt-- >0;)E.has(be[Xt])||(ge=Xt);if(N==0||N==1)for(Xt=ct;Jt==null&&Xt++<be.length;)E.has(be[Xt])||(Jt=Xt);if(ge!=null||Jt!=null)if(Ut){let Ve=ge==null?-1/0:U(we[ge],C,Ot,0),Ke=Jt==null?1/0:U(we[Jt],C,Ot,0),wn=re-Ve,De=Ke-re;wn<=De?wn<=Nt&&(St=ge):De<=Nt&&(St=Jt)}else St=Jt==null?ge:ge==null?Jt:ct-ge<=Jt-ct?ge:Jt}else Ut&&gn(re-U(we[ct],C,Ot,0))>Nt&&(St=null);return St}}let Kt=v=>{ut.event=v};ut.idxs=et,ut._lock=!1;let dt=ut.points;dt.show=ye(dt.show),dt.size=ye(dt.size),dt.stroke=ye(dt.stroke),dt.width=ye(dt.width),dt.fill=ye(dt.fill);let Bt=n.focus=un({},i.focus||{alpha:.3},ut.focus),Qt=Bt.prox>=0,Ct=Qt&&dt.one,le=[],Be=[],kn=[];function fo(v,E){let D=dt.show(n,E);if(D instanceof HTMLElement)return ni(D,O0),ni(D,v.class),Gi(D,-10,-10,k,Pt),g.insertBefore(D,le[E]),D}function ur(v,E){if(s==1||E>0){let D=s==1&&M[v.scale].time,N=v.value;v.value=D?Ef(N)?Lf($,If(N,O)):N||q:N||j_,v.label=v.label||(D?H_:G_)}if(Ct||E>0){v.width=v.width==null?1:v.width,v.paths=v.paths||ux||e_,v.fillTo=ye(v.fillTo||nx),v.pxAlign=+Se(v.pxAlign,x),v.pxRound=Vf(v.pxAlign),v.stroke=ye(v.stroke||null),v.fill=ye(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let D=K_(Wn(1,v.width),1),N=v.points=un({},{size:D,width:Wn(1,D*.2),stroke:v.stroke,space:D*2,paths:dx,_stroke:null,_fill:null},v.points);N.show=ye(N.show),N.filter=ye(N.filter),N.fill=ye(N.fill),N.stroke=ye(N.stroke),N.paths=ye(N.paths),N.pxAlign=v.pxAlign}if(K){let D=Le(v,E);jt.splice(E,0,D[0]),Vt.splice(E,0,D[1]),ht.values.push(null)}if(gt){et.splice(E,0,null);let D=null;Ct?E==0&&(D=fo(v,E)):E>0&&(D=fo(v,E)),le.splice(E,0,D),Be.splice(E,0,0),kn.splice(E,0,0)}Sn("addSeries",E)}function lh(v,E){E=E??y.length,v=s==1?Fh(v,E,Nf,kf):Fh(v,E,{},Bf),y.splice(E,0,v),ur(y[E],E)}n.addSeries=lh;function wa(v){if(y.splice(v,1),K){ht.values.splice(v,1),Vt.splice(v,1);let E=jt.splice(v,1)[0];fn(null,E.firstChild),E.remove()}gt&&(et.splice(v,1),le.splice(v,1)[0].remove(),Be.splice(v,1),kn.splice(v,1)),Sn("delSeries",v)}n.delSeries=wa;let Ui=[!1,!1,!1,!1];function Zi(v,E){if(v._show=v.show,v.show){let D=v.side%2,N=M[v.scale];N==null&&(v.scale=D?y[1].scale:w,N=M[v.scale]);let H=N.time;v.size=ye(v.size),v.space=ye(v.space),v.rotate=ye(v.rotate),Ss(v.incrs)&&v.incrs.forEach(ct=>{!ws.has(ct)&&ws.set(ct,tp(ct))}),v.incrs=ye(v.incrs||(N.distr==2?S_:H?m==1?E_:R_:$s)),v.splits=ye(v.splits||(H&&N.distr==1?st:N.distr==3?Lh:N.distr==4?$_:X_)),v.stroke=ye(v.stroke),v.grid.stroke=ye(v.grid.stroke),v.ticks.stroke=ye(v.ticks.stroke),v.border.stroke=ye(v.border.stroke);let j=v.values;v.values=Ss(j)&&!Ss(j[0])?ye(j):H?Ss(j)?Pf($,Cf(j,O)):Ef(j)?I_($,j):j||W:j||W_,v.filter=ye(v.filter||(N.distr>=3&&N.log==10?Z_:N.distr==3&&N.log==2?J_:Kf)),v.font=Xf(v.font),v.labelFont=Xf(v.labelFont),v._size=v.size(n,null,E,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(Ui[E]=!0,v._el=pi(D0,d))}}function Ji(v,E,D,N){let[H,j,ct,_t]=D,St=E%2,Nt=0;return St==0&&(_t||j)&&(Nt=E==0&&!H||E==2&&!ct?mn(Df.size/3):0),St==1&&(H||ct)&&(Nt=E==1&&!j||E==3&&!_t?mn(Ff.size/2):0),Nt}let po=n.padding=(i.padding||[Ji,Ji,Ji,Ji]).map(v=>ye(Se(v,Ji))),yi=n._padding=po.map((v,E)=>v(n,E,Ui,0)),Je,en=null,nn=null,Fi=s==1?y[0].idxs:null,Kn=null,gs=!1;function mo(v,E){if(t=v??[],n.data=n._data=t,s==2){Je=0;for(let D=1;D<y.length;D++)Je+=t[D][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),Kn=t[0],Je=Kn.length;let D=t;if(V==2){D=t.slice();let N=D[0]=Array(Je);for(let H=0;H<Je;H++)N[H]=H}n._data=t=D}if(he(!0),Sn("setData"),V==2&&(bt=!0),E!==!1){let D=C;D.auto(n,gs)?go():ys(w,D.min,D.max),nt=nt||ut.left>=0,yt=!0,Ln()}}n.setData=mo;function go(){gs=!0;let v,E;s==1&&(Je>0?(en=Fi[0]=0,nn=Fi[1]=Je-1,v=t[0][en],E=t[0][nn],V==2?(v=en,E=nn):v==E&&(V==3?[v,E]=za(v,v,C.log,!1):V==4?[v,E]=zh(v,v,C.log,!1):C.time?E=v+mn(86400/m):[v,E]=Oa(v,E,Vh,!0))):(en=Fi[0]=v=null,nn=Fi[1]=E=null)),ys(w,v,E)}let dr,_s,fr,T,G,tt,Z,J,At,It;function Rt(v,E,D,N,H,j){v??=lf,D??=Hh,N??="butt",H??=lf,j??="round",v!=dr&&(u.strokeStyle=dr=v),H!=_s&&(u.fillStyle=_s=H),E!=fr&&(u.lineWidth=fr=E),j!=G&&(u.lineJoin=G=j),N!=tt&&(u.lineCap=tt=N),D!=T&&u.setLineDash(T=D)}function Lt(v,E,D,N){E!=_s&&(u.fillStyle=_s=E),v!=Z&&(u.font=Z=v),D!=J&&(u.textAlign=J=D),N!=At&&(u.textBaseline=At=N)}function zt(v,E,D,N,H=0){if(N.length>0&&v.auto(n,gs)&&(E==null||E.min==null)){let j=Se(en,0),ct=Se(nn,N.length-1),_t=D.min==null?Z0(N,j,ct,H,v.distr==3):[D.min,D.max];v.min=wi(v.min,D.min=_t[0]),v.max=Wn(v.max,D.max=_t[1])}}let te={min:null,max:null};function fe(){for(let N in M){let H=M[N];z[N]==null&&(H.min==null||z[w]!=null&&H.auto(n,gs))&&(z[N]=te)}for(let N in M){let H=M[N];z[N]==null&&H.from!=null&&z[H.from]!=null&&(z[N]=te)}z[w]!=null&&he(!0);let v={};for(let N in z){let H=z[N];if(H!=null){let j=v[N]=Cr(M[N],s_);if(H.min!=null)un(j,H);else if(N!=w||s==2)if(Je==0&&j.from==null){let ct=j.range(n,null,null,N);j.min=ct[0],j.max=ct[1]}else j.min=Ue,j.max=-Ue}}if(Je>0){y.forEach((N,H)=>{if(s==1){let j=N.scale,ct=z[j];if(ct==null)return;let _t=v[j];if(H==0){let St=_t.range(n,_t.min,_t.max,j);_t.min=St[0],_t.max=St[1],en=Si(_t.min,t[0]),nn=Si(_t.max,t[0]),nn-en>1&&(t[0][en]<_t.min&&en++,t[0][nn]>_t.max&&nn--),N.min=Kn[en],N.max=Kn[nn]}else N.show&&N.auto&&zt(_t,ct,N,t[H],N.sorted);N.idxs[0]=en,N.idxs[1]=nn}else if(H>0&&N.show&&N.auto){let[j,ct]=N.facets,_t=j.scale,St=ct.scale,[Nt,Ut]=t[H],Ot=v[_t],re=v[St];Ot!=null&&zt(Ot,z[_t],j,Nt,j.sorted),re!=null&&zt(re,z[St],ct,Ut,ct.sorted),N.min=ct.min,N.max=ct.max}});for(let N in v){let H=v[N],j=z[N];if(H.from==null&&(j==null||j.min==null)){let ct=H.range(n,H.min==Ue?null:H.min,H.max==-Ue?null:H.max,N);H.min=ct[0],H.max=ct[1]}}}for(let N in v){let H=v[N];if(H.from!=null){let j=v[H.from];if(j.min==null)H.min=H.max=null;else{let ct=H.range(n,j.min,j.max,N);H.min=ct[0],H.max=ct[1]}}}let E={},D=!1;for(let N in v){let H=v[N],j=M[N];if(j.min!=H.min||j.max!=H.max){j.min=H.min,j.max=H.max;let ct=j.distr;j._min=ct==3?ts(j.min):ct==4?Sh(j.min,j.asinh):ct==100?j.fwd(j.min):j.min,j._max=ct==3?ts(j.max):ct==4?Sh(j.max,j.asinh):ct==100?j.fwd(j.max):j.max,E[N]=D=!0}}if(D){y.forEach((N,H)=>{s==2?H>0&&E.y&&(N._paths=null):E[N.scale]&&(N._paths=null)});for(let N in E)bt=!0,Sn("setScale",N);gt&&ut.left>=0&&(nt=yt=!0)}for(let N in z)z[N]=null}function kt(v){let E=Ih(en-1,0,Je-1),D=Ih(nn+1,0,Je-1);for(;v[E]==null&&E>0;)E--;for(;v[D]==null&&D<Je-1;)D++;return[E,D]}function pe(){if(Je>0){let v=y.some(E=>E._focus)&&It!=Bt.alpha;v&&(u.globalAlpha=It=Bt.alpha),y.forEach((E,D)=>{if(D>0&&E.show&&(Ye(D,!1),Ye(D,!0),E._paths==null)){let N=It;It!=E.alpha&&(u.globalAlpha=It=E.alpha);let H=s==2?[0,t[D][0].length-1]:kt(t[D]);E._paths=E.paths(n,D,H[0],H[1]),It!=N&&(u.globalAlpha=It=N)}}),y.forEach((E,D)=>{if(D>0&&E.show){let N=It;It!=E.alpha&&(u.globalAlpha=It=E.alpha),E._paths!=null&&Ce(D,!1);{let H=E._paths!=null?E._paths.gaps:null,j=E.points.show(n,D,en,nn,H),ct=E.points.filter(n,D,j,H);(j||ct)&&(E.points._paths=E.points.paths(n,D,en,nn,ct),Ce(D,!0))}It!=N&&(u.globalAlpha=It=N),Sn("drawSeries",D)}}),v&&(u.globalAlpha=It=1)}}function Ye(v,E){let D=E?y[v].points:y[v];D._stroke=D.stroke(n,v),D._fill=D.fill(n,v)}function Ce(v,E){let D=E?y[v].points:y[v],{stroke:N,fill:H,clip:j,flags:ct,_stroke:_t=D._stroke,_fill:St=D._fill,_width:Nt=D.width}=D._paths;Nt=Fe(Nt*Ee,3);let Ut=null,Ot=Nt%2/2;E&&St==null&&(St=Nt>0?"#fff":_t);let re=D.pxAlign==1&&Ot>0;if(re&&u.translate(Ot,Ot),!E){let we=L-Nt/2,be=S-Nt/2,ge=Y+Nt,Jt=ft+Nt;Ut=new Path2D,Ut.rect(we,be,ge,Jt)}E?Ft(_t,Nt,D.dash,D.cap,St,N,H,ct,j):Pe(v,_t,Nt,D.dash,D.cap,St,N,H,ct,Ut,j),re&&u.translate(-Ot,-Ot)}function Pe(v,E,D,N,H,j,ct,_t,St,Nt,Ut){let Ot=!1;St!=0&&R.forEach((re,we)=>{if(re.series[0]==v){let be=y[re.series[1]],ge=t[re.series[1]],Jt=(be._paths||Ro).band;Ss(Jt)&&(Jt=re.dir==1?Jt[0]:Jt[1]);let Xt,Ve=null;be.show&&Jt&&j0(ge,en,nn)?(Ve=re.fill(n,we)||j,Xt=be._paths.clip):Jt=null,Ft(E,D,N,H,Ve,ct,_t,St,Nt,Ut,Xt,Jt),Ot=!0}}),Ot||Ft(E,D,N,H,j,ct,_t,St,Nt,Ut)}let pn=Pr|Nh;function Ft(v,E,D,N,H,j,ct,_t,St,Nt,Ut,Ot){Rt(v,E,D,N,H),(St||Nt||Ot)&&(u.save(),St&&u.clip(St),Nt&&u.clip(Nt)),Ot?(_t&pn)==pn?(u.clip(Ot),Ut&&u.clip(Ut),xe(H,ct),an(v,j,E)):_t&Nh?(xe(H,ct),u.clip(Ot),an(v,j,E)):_t&Pr&&(u.save(),u.clip(Ot),Ut&&u.clip(Ut),xe(H,ct),u.restore(),an(v,j,E)):(xe(H,ct),an(v,j,E)),(St||Nt||Ot)&&u.restore()}function an(v,E,D){D>0&&(E instanceof Map?E.forEach((N,H)=>{u.strokeStyle=dr=H,u.stroke(N)}):E!=null&&v&&u.stroke(E))}function xe(v,E){E instanceof Map?E.forEach((D,N)=>{u.fillStyle=_s=N,u.fill(D)}):E!=null&&v&&u.fill(E)}function ji(v,E,D,N){let H=A[v],j;if(N<=0)j=[0,0];else{let ct=H._space=H.space(n,v,E,D,N),_t=H._incrs=H.incrs(n,v,E,D,N,ct);j=xx(E,D,_t,N,ct)}return H._found=j}function ln(v,E,D,N,H,j,ct,_t,St,Nt){let Ut=ct%2/2;x==1&&u.translate(Ut,Ut),Rt(_t,ct,St,Nt,_t),u.beginPath();let Ot,re,we,be,ge=H+(N==0||N==3?-j:j);D==0?(re=H,be=ge):(Ot=H,we=ge);for(let Jt=0;Jt<v.length;Jt++)E[Jt]!=null&&(D==0?Ot=we=v[Jt]:re=be=v[Jt],u.moveTo(Ot,re),u.lineTo(we,be));u.stroke(),x==1&&u.translate(-Ut,-Ut)}function pr(v){let E=!0;return A.forEach((D,N)=>{if(!D.show)return;let H=M[D.scale];if(H.min==null){D._show&&(E=!1,D._show=!1,he(!1));return}else D._show||(E=!1,D._show=!0,he(!1));let j=D.side,ct=j%2,{min:_t,max:St}=H,[Nt,Ut]=ji(N,_t,St,ct==0?k:Pt);if(Ut==0)return;let Ot=H.distr==2,re=D._splits=D.splits(n,N,_t,St,Nt,Ut,Ot),we=H.distr==2?re.map(Xt=>Kn[Xt]):re,be=H.distr==2?Kn[re[1]]-Kn[re[0]]:Nt,ge=D._values=D.values(n,D.filter(n,we,N,Ut,be),N,Ut,be);D._rotate=j==2?D.rotate(n,ge,N,Ut):0;let Jt=D._size;D._size=mi(D.size(n,ge,N,v)),Jt!=null&&D._size!=Jt&&(E=!1)}),E}function Oi(v){let E=!0;return po.forEach((D,N)=>{let H=D(n,N,Ui,v);H!=yi[N]&&(E=!1),yi[N]=H}),E}function Ki(){for(let v=0;v<A.length;v++){let E=A[v];if(!E.show||!E._show)continue;let D=E.side,N=D%2,H,j,ct=E.stroke(n,v),_t=D==0||D==3?-1:1,[St,Nt]=E._found;if(E.label!=null){let Gn=E.labelGap*_t,ei=mn((E._lpos+Gn)*Ee);Lt(E.labelFont[0],ct,"center",D==2?"top":af),u.save(),N==1?(H=j=0,u.translate(ei,mn(S+ft/2)),u.rotate((D==3?-Ua:Ua)/2)):(H=mn(L+Y/2),j=ei);let Ws=Jf(E.label)?E.label(n,v,St,Nt):E.label;u.fillText(Ws,H,j),u.restore()}if(Nt==0)continue;let Ut=M[E.scale],Ot=N==0?Y:ft,re=N==0?L:S,we=E._splits,be=Ut.distr==2?we.map(Gn=>Kn[Gn]):we,ge=Ut.distr==2?Kn[we[1]]-Kn[we[0]]:St,Jt=E.ticks,Xt=E.border,Ve=Jt.show?Jt.size:0,Ke=mn(Ve*Ee),wn=mn((E.alignTo==2?E._size-Ve-E.gap:E.gap)*Ee),De=E._rotate*-Ua/180,Qe=p(E._pos*Ee),Qn=(Ke+wn)*_t,Vn=Qe+Qn;j=N==0?Vn:0,H=N==1?Vn:0;let di=E.font[0],vi=E.align==1?wr:E.align==2?vh:De>0?wr:De<0?vh:N==0?"center":D==3?vh:wr,zi=De||N==1?"middle":D==2?"top":af;Lt(di,ct,vi,zi);let ti=E.font[1]*E.lineGap,fi=we.map(Gn=>p(a(Gn,Ut,Ot,re))),Mi=E._values;for(let Gn=0;Gn<Mi.length;Gn++){let ei=Mi[Gn];if(ei!=null){N==0?H=fi[Gn]:j=fi[Gn],ei=""+ei;let Ws=ei.indexOf(`
`)==-1?[ei]:ei.split(/\n/gm);for(let Hn=0;Hn<Ws.length;Hn++){let Qd=Ws[Hn];De?(u.save(),u.translate(H,j+Hn*ti),u.rotate(De),u.fillText(Qd,0,0),u.restore()):u.fillText(Qd,H,j+Hn*ti)}}}Jt.show&&ln(fi,Jt.filter(n,be,v,Nt,ge),N,D,Qe,Ke,Fe(Jt.width*Ee,3),Jt.stroke(n,v),Jt.dash,Jt.cap);let Vi=E.grid;Vi.show&&ln(fi,Vi.filter(n,be,v,Nt,ge),N,N==0?2:1,N==0?S:L,N==0?ft:Y,Fe(Vi.width*Ee,3),Vi.stroke(n,v),Vi.dash,Vi.cap),Xt.show&&ln([Qe],[1],N==0?1:0,N==0?1:2,N==1?S:L,N==1?ft:Y,Fe(Xt.width*Ee,3),Xt.stroke(n,v),Xt.dash,Xt.cap)}Sn("drawAxes")}function he(v){y.forEach((E,D)=>{D>0&&(E._paths=null,v&&(s==1?(E.min=null,E.max=null):E.facets.forEach(N=>{N.min=null,N.max=null})))})}let je=!1,zn=!1,Ie=[];function cn(){zn=!1;for(let v=0;v<Ie.length;v++)Sn(...Ie[v]);Ie.length=0}function Ln(){je||(u_(Ud),je=!0)}function Ea(v,E=!1){je=!0,zn=E,v(n),Ud(),E&&Ie.length>0&&queueMicrotask(cn)}n.batch=Ea;function Ud(){if(at&&(fe(),at=!1),bt&&(Tt(),bt=!1),Mt){if(Ge(f,wr,Zt),Ge(f,"top",ae),Ge(f,wo,k),Ge(f,Eo,Pt),Ge(g,wr,Zt),Ge(g,"top",ae),Ge(g,wo,k),Ge(g,Eo,Pt),Ge(d,wo,Ze),Ge(d,Eo,on),h.width=mn(Ze*Ee),h.height=mn(on*Ee),A.forEach(({_el:v,_show:E,_size:D,_pos:N,side:H})=>{if(v!=null)if(E){let j=H===3||H===0?D:0,ct=H%2==1;Ge(v,ct?"left":"top",N-j),Ge(v,ct?"width":"height",D),Ge(v,ct?"top":"left",ct?ae:Zt),Ge(v,ct?"height":"width",ct?Pt:k),Ch(v,qs)}else ni(v,qs)}),dr=_s=fr=G=tt=Z=J=At=T=null,It=1,yo(!0),Zt!=Et||ae!=Ne||k!=Gt||Pt!=qt){he(!1);let v=k/Gt,E=Pt/qt;if(gt&&!nt&&ut.left>=0){ut.left*=v,ut.top*=E,mr&&Gi(mr,mn(ut.left),0,k,Pt),gr&&Gi(gr,0,mn(ut.top),k,Pt);for(let D=0;D<le.length;D++){let N=le[D];N!=null&&(Be[D]*=v,kn[D]*=E,Gi(N,mi(Be[D]),mi(kn[D]),k,Pt))}}if(ze.show&&!rt&&ze.left>=0&&ze.width>0){ze.left*=v,ze.width*=v,ze.top*=E,ze.height*=E;for(let D in ph)Ge(yr,D,ze[D])}Et=Zt,Ne=ae,Gt=k,qt=Pt}Sn("setSize"),Mt=!1}Ze>0&&on>0&&(u.clearRect(0,0,h.width,h.height),Sn("drawClear"),b.forEach(v=>v()),Sn("draw")),ze.show&&rt&&(Ta(ze),rt=!1),gt&&nt&&(Hs(null,!0,!1),nt=!1),ht.show&&ht.live&&yt&&(dh(),yt=!1),l||(l=!0,n.status=1,Sn("ready")),gs=!1,je=!1}n.redraw=(v,E)=>{bt=E||!1,v!==!1?ys(w,C.min,C.max):Ln()};function ch(v,E){let D=M[v];if(D.from==null){if(Je==0){let N=D.range(n,E.min,E.max,v);E.min=N[0],E.max=N[1]}if(E.min>E.max){let N=E.min;E.min=E.max,E.max=N}if(Je>1&&E.min!=null&&E.max!=null&&E.max-E.min<1e-16)return;v==w&&D.distr==2&&Je>0&&(E.min=Si(E.min,t[0]),E.max=Si(E.max,t[0]),E.min==E.max&&E.max++),z[v]=E,at=!0,Ln()}}n.setScale=ch;let hh,uh,mr,gr,Fd,Od,_r,xr,Bd,kd,ke,$e,xs=!1,Cn=ut.drag,Mn=Cn.x,bn=Cn.y;gt&&(ut.x&&(hh=pi(U0,g)),ut.y&&(uh=pi(F0,g)),C.ori==0?(mr=hh,gr=uh):(mr=uh,gr=hh),ke=ut.left,$e=ut.top);let ze=n.select=un({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),yr=ze.show?pi(N0,ze.over?g:f):null;function Ta(v,E){if(ze.show){for(let D in v)ze[D]=v[D],D in ph&&Ge(yr,D,v[D]);E!==!1&&Sn("setSelect")}}n.setSelect=Ta;function c0(v){if(y[v].show)K&&Ch(jt[v],qs);else if(K&&ni(jt[v],qs),gt){let D=Ct?le[0]:le[v];D!=null&&Gi(D,-10,-10,k,Pt)}}function ys(v,E,D){ch(v,{min:E,max:D})}function Bi(v,E,D,N){E.focus!=null&&p0(v),E.show!=null&&y.forEach((H,j)=>{j>0&&(v==j||v==null)&&(H.show=E.show,c0(j),s==2?(ys(H.facets[0].scale,null,null),ys(H.facets[1].scale,null,null)):ys(H.scale,null,null),Ln())}),D!==!1&&Sn("setSeries",v,E),N&&vo("setSeries",n,v,E)}n.setSeries=Bi;function h0(v,E){un(R[v],E)}function u0(v,E){v.fill=ye(v.fill||null),v.dir=Se(v.dir,-1),E=E??R.length,R.splice(E,0,v)}function d0(v){v==null?R.length=0:R.splice(v,1)}n.addBand=u0,n.setBand=h0,n.delBand=d0;function f0(v,E){y[v].alpha=E,gt&&le[v]!=null&&(le[v].style.opacity=E),K&&jt[v]&&(jt[v].style.opacity=E)}let Qi,vs,Gs,vr={focus:!0};function p0(v){if(v!=Gs){let E=v==null,D=Bt.alpha!=1;y.forEach((N,H)=>{if(s==1||H>0){let j=E||H==0||H==v;N._focus=E?null:j,D&&f0(H,j?1:Bt.alpha)}}),Gs=v,D&&Ln()}}K&&Qt&&Me(uf,pt,v=>{ut._lock||(Kt(v),Gs!=null&&Bi(null,vr,!0,hn.setSeries))});function ki(v,E,D){let N=M[E];D&&(v=v/Ee-(N.ori==1?ae:Zt));let H=k;N.ori==1&&(H=Pt,v=H-v),N.dir==-1&&(v=H-v);let j=N._min,ct=N._max,_t=v/H,St=j+(ct-j)*_t,Nt=N.distr;return Nt==3?Ar(10,St):Nt==4?Q0(St,N.asinh):Nt==100?N.bwd(St):St}function m0(v,E){let D=ki(v,w,E);return Si(D,t[0],en,nn)}n.valToIdx=v=>Si(v,t[0]),n.posToIdx=m0,n.posToVal=ki,n.valToPos=(v,E,D)=>M[E].ori==0?r(v,M[E],D?Y:k,D?L:0):o(v,M[E],D?ft:Pt,D?S:0),n.setCursor=(v,E,D)=>{ke=v.left,$e=v.top,Hs(null,E,D)};function zd(v,E){Ge(yr,wr,ze.left=v),Ge(yr,wo,ze.width=E)}function Vd(v,E){Ge(yr,"top",ze.top=v),Ge(yr,Eo,ze.height=E)}let _o=C.ori==0?zd:Vd,xo=C.ori==1?zd:Vd;function g0(){if(K&&ht.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&ce)continue;let E=ht.values[v],D=0;for(let N in E)Vt[v][D++].firstChild.nodeValue=E[N]}}function dh(v,E){if(v!=null&&(v.idxs?v.idxs.forEach((D,N)=>{et[N]=D}):i_(v.idx)||et.fill(v.idx),ht.idx=et[0]),K&&ht.live){for(let D=0;D<y.length;D++)(D>0||s==1&&!ce)&&_0(D,et[D]);g0()}yt=!1,E!==!1&&Sn("setLegend")}n.setLegend=dh;function _0(v,E){let D=y[v],N=v==0&&V==2?Kn:t[v],H;ce?H=D.values(n,v,E)??se:(H=D.value(n,E==null?null:N[E],v,E),H=H==null?se:{_:H}),ht.values[v]=H}function Hs(v,E,D){Bd=ke,kd=$e,[ke,$e]=ut.move(n,ke,$e),ut.left=ke,ut.top=$e,gt&&(mr&&Gi(mr,mn(ke),0,k,Pt),gr&&Gi(gr,0,mn($e),k,Pt));let N,H=en>nn;Qi=Ue,vs=null;let j=C.ori==0?k:Pt,ct=C.ori==1?k:Pt;if(ke<0||Je==0||H){N=ut.idx=null;for(let _t=0;_t<y.length;_t++){let St=le[_t];St!=null&&Gi(St,-10,-10,k,Pt)}Qt&&Bi(null,vr,!0,v==null&&hn.setSeries),ht.live&&(et.fill(N),yt=!0)}else{let _t,St,Nt;s==1&&(_t=C.ori==0?ke:$e,St=ki(_t,w),N=ut.idx=Si(St,t[0],en,nn),Nt=U(t[0][N],C,j,0));let Ut=-10,Ot=-10,re=0,we=0,be=!0,ge="",Jt="";for(let Xt=s==2?1:0;Xt<y.length;Xt++){let Ve=y[Xt],Ke=et[Xt],wn=Ke==null?null:s==1?t[Xt][Ke]:t[Xt][1][Ke],De=ut.dataIdx(n,Xt,N,St),Qe=De==null?null:s==1?t[Xt][De]:t[Xt][1][De];if(yt=yt||Qe!=wn||De!=Ke,et[Xt]=De,Xt>0&&Ve.show){let Qn=De==null?-10:De==N?Nt:U(s==1?t[0][De]:t[Xt][0][De],C,j,0),Vn=Qe==null?-10:P(Qe,s==1?M[Ve.scale]:M[Ve.facets[1].scale],ct,0);if(Qt&&Qe!=null){let di=C.ori==1?ke:$e,vi=gn(Bt.dist(n,Xt,De,Vn,di));if(vi<Qi){let zi=Bt.bias;if(zi!=0){let ti=ki(di,Ve.scale),fi=Qe>=0?1:-1,Mi=ti>=0?1:-1;Mi==fi&&(Mi==1?zi==1?Qe>=ti:Qe<=ti:zi==1?Qe<=ti:Qe>=ti)&&(Qi=vi,vs=Xt)}else Qi=vi,vs=Xt}}if(yt||Ct){let di,vi;C.ori==0?(di=Qn,vi=Vn):(di=Vn,vi=Qn);let zi,ti,fi,Mi,Vi,Gn,ei=!0,Ws=dt.bbox;if(Ws!=null){ei=!1;let Hn=Ws(n,Xt);fi=Hn.left,Mi=Hn.top,zi=Hn.width,ti=Hn.height}else fi=di,Mi=vi,zi=ti=dt.size(n,Xt);if(Gn=dt.fill(n,Xt),Vi=dt.stroke(n,Xt),Ct)Xt==vs&&Qi<=Bt.prox&&(Ut=fi,Ot=Mi,re=zi,we=ti,be=ei,ge=Gn,Jt=Vi);else{let Hn=le[Xt];Hn!=null&&(Be[Xt]=fi,kn[Xt]=Mi,xf(Hn,zi,ti,ei),gf(Hn,Gn,Vi),Gi(Hn,mi(fi),mi(Mi),k,Pt))}}}}if(Ct){let Xt=Bt.prox,Ve=Gs==null?Qi<=Xt:Qi>Xt||vs!=Gs;if(yt||Ve){let Ke=le[0];Ke!=null&&(Be[0]=Ut,kn[0]=Ot,xf(Ke,re,we,be),gf(Ke,ge,Jt),Gi(Ke,mi(Ut),mi(Ot),k,Pt))}}}if(ze.show&&xs)if(v!=null){let[_t,St]=hn.scales,[Nt,Ut]=hn.match,[Ot,re]=v.cursor.sync.scales,we=v.cursor.drag;if(Mn=we._x,bn=we._y,Mn||bn){let{left:be,top:ge,width:Jt,height:Xt}=v.select,Ve=v.scales[Ot].ori,Ke=v.posToVal,wn,De,Qe,Qn,Vn,di=_t!=null&&Nt(_t,Ot),vi=St!=null&&Ut(St,re);di&&Mn?(Ve==0?(wn=be,De=Jt):(wn=ge,De=Xt),Qe=M[_t],Qn=U(Ke(wn,Ot),Qe,j,0),Vn=U(Ke(wn+De,Ot),Qe,j,0),_o(wi(Qn,Vn),gn(Vn-Qn))):_o(0,j),vi&&bn?(Ve==1?(wn=be,De=Jt):(wn=ge,De=Xt),Qe=M[St],Qn=P(Ke(wn,re),Qe,ct,0),Vn=P(Ke(wn+De,re),Qe,ct,0),xo(wi(Qn,Vn),gn(Vn-Qn))):xo(0,ct)}else mh()}else{let _t=gn(Bd-Fd),St=gn(kd-Od);if(C.ori==1){let re=_t;_t=St,St=re}Mn=Cn.x&&_t>=Cn.dist,bn=Cn.y&&St>=Cn.dist;let Nt=Cn.uni;Nt!=null?Mn&&bn&&(Mn=_t>=Nt,bn=St>=Nt,!Mn&&!bn&&(St>_t?bn=!0:Mn=!0)):Cn.x&&Cn.y&&(Mn||bn)&&(Mn=bn=!0);let Ut,Ot;Mn&&(C.ori==0?(Ut=_r,Ot=ke):(Ut=xr,Ot=$e),_o(wi(Ut,Ot),gn(Ot-Ut)),bn||xo(0,ct)),bn&&(C.ori==1?(Ut=_r,Ot=ke):(Ut=xr,Ot=$e),xo(wi(Ut,Ot),gn(Ot-Ut)),Mn||_o(0,j)),!Mn&&!bn&&(_o(0,0),xo(0,0))}if(Cn._x=Mn,Cn._y=bn,v==null){if(D){if(Kd!=null){let[_t,St]=hn.scales;hn.values[0]=_t!=null?ki(C.ori==0?ke:$e,_t):null,hn.values[1]=St!=null?ki(C.ori==1?ke:$e,St):null}vo(Mh,n,ke,$e,k,Pt,N)}if(Qt){let _t=D&&hn.setSeries,St=Bt.prox;Gs==null?Qi<=St&&Bi(vs,vr,!0,_t):Qi>St?Bi(null,vr,!0,_t):vs!=Gs&&Bi(vs,vr,!0,_t)}}yt&&(ht.idx=N,dh()),E!==!1&&Sn("setCursor")}let Ms=null;Object.defineProperty(n,"rect",{get(){return Ms==null&&yo(!1),Ms}});function yo(v=!1){v?Ms=null:(Ms=g.getBoundingClientRect(),Sn("syncRect",Ms))}function Gd(v,E,D,N,H,j,ct){ut._lock||xs&&v!=null&&v.movementX==0&&v.movementY==0||(fh(v,E,D,N,H,j,ct,!1,v!=null),v!=null?Hs(null,!0,!0):Hs(E,!0,!1))}function fh(v,E,D,N,H,j,ct,_t,St){if(Ms==null&&yo(!1),Kt(v),v!=null)D=v.clientX-Ms.left,N=v.clientY-Ms.top;else{if(D<0||N<0){ke=-10,$e=-10;return}let[Nt,Ut]=hn.scales,Ot=E.cursor.sync,[re,we]=Ot.values,[be,ge]=Ot.scales,[Jt,Xt]=hn.match,Ve=E.axes[0].side%2==1,Ke=C.ori==0?k:Pt,wn=C.ori==1?k:Pt,De=Ve?j:H,Qe=Ve?H:j,Qn=Ve?N:D,Vn=Ve?D:N;if(be!=null?D=Jt(Nt,be)?a(re,M[Nt],Ke,0):-10:D=Ke*(Qn/De),ge!=null?N=Xt(Ut,ge)?a(we,M[Ut],wn,0):-10:N=wn*(Vn/Qe),C.ori==1){let di=D;D=N,N=di}}St&&(E==null||E.cursor.event.type==Mh)&&((D<=1||D>=k-1)&&(D=Xs(D,k)),(N<=1||N>=Pt-1)&&(N=Xs(N,Pt))),_t?(Fd=D,Od=N,[_r,xr]=ut.move(n,D,N)):(ke=D,$e=N)}let ph={width:0,height:0,left:0,top:0};function mh(){Ta(ph,!1)}let Hd,Wd,Xd,$d;function qd(v,E,D,N,H,j,ct){xs=!0,Mn=bn=Cn._x=Cn._y=!1,fh(v,E,D,N,H,j,ct,!0,!1),v!=null&&(Me(bh,Ah,Yd,!1),vo(cf,n,_r,xr,k,Pt,null));let{left:_t,top:St,width:Nt,height:Ut}=ze;Hd=_t,Wd=St,Xd=Nt,$d=Ut}function Yd(v,E,D,N,H,j,ct){xs=Cn._x=Cn._y=!1,fh(v,E,D,N,H,j,ct,!1,!0);let{left:_t,top:St,width:Nt,height:Ut}=ze,Ot=Nt>0||Ut>0,re=Hd!=_t||Wd!=St||Xd!=Nt||$d!=Ut;if(Ot&&re&&Ta(ze),Cn.setScale&&Ot&&re){let we=_t,be=Nt,ge=St,Jt=Ut;if(C.ori==1&&(we=St,be=Ut,ge=_t,Jt=Nt),Mn&&ys(w,ki(we,w),ki(we+be,w)),bn)for(let Xt in M){let Ve=M[Xt];Xt!=w&&Ve.from==null&&Ve.min!=Ue&&ys(Xt,ki(ge+Jt,Xt),ki(ge,Xt))}mh()}else ut.lock&&(ut._lock=!ut._lock,Hs(E,!0,v!=null));v!=null&&(fn(bh,Ah),vo(bh,n,ke,$e,k,Pt,null))}function x0(v,E,D,N,H,j,ct){if(ut._lock)return;Kt(v);let _t=xs;if(xs){let St=!0,Nt=!0,Ut=10,Ot,re;C.ori==0?(Ot=Mn,re=bn):(Ot=bn,re=Mn),Ot&&re&&(St=ke<=Ut||ke>=k-Ut,Nt=$e<=Ut||$e>=Pt-Ut),Ot&&St&&(ke=ke<_r?0:k),re&&Nt&&($e=$e<xr?0:Pt),Hs(null,!0,!0),xs=!1}ke=-10,$e=-10,et.fill(null),Hs(null,!0,!0),_t&&(xs=_t)}function Zd(v,E,D,N,H,j,ct){ut._lock||(Kt(v),go(),mh(),v!=null&&vo(df,n,ke,$e,k,Pt,null))}function Jd(){A.forEach(yx),B(n.width,n.height,!0)}Ys(Fa,Tr,Jd);let Mr={};Mr.mousedown=qd,Mr.mousemove=Gd,Mr.mouseup=Yd,Mr.dblclick=Zd,Mr.setSeries=(v,E,D,N)=>{let H=hn.match[2];D=H(n,E,D),D!=-1&&Bi(D,N,!0,!1)},gt&&(Me(cf,g,qd),Me(Mh,g,Gd),Me(hf,g,v=>{Kt(v),yo(!1)}),Me(uf,g,x0),Me(df,g,Zd),Uh.add(n),n.syncRect=yo);let Aa=n.hooks=i.hooks||{};function Sn(v,E,D){zn?Ie.push([v,E,D]):v in Aa&&Aa[v].forEach(N=>{N.call(null,n,E,D)})}(i.plugins||[]).forEach(v=>{for(let E in v.hooks)Aa[E]=(Aa[E]||[]).concat(v.hooks[E])});let jd=(v,E,D)=>D,hn=un({key:null,setSeries:!1,filters:{pub:Sf,sub:Sf},scales:[w,y[1]?y[1].scale:null],match:[wf,wf,jd],values:[null,null]},ut.sync);hn.match.length==2&&hn.match.push(jd),ut.sync=hn;let Kd=hn.key,gh=vp(Kd);function vo(v,E,D,N,H,j,ct){hn.filters.pub(v,E,D,N,H,j,ct)&&gh.pub(v,E,D,N,H,j,ct)}gh.sub(n);function y0(v,E,D,N,H,j,ct){hn.filters.sub(v,E,D,N,H,j,ct)&&Mr[v](null,E,D,N,H,j,ct)}n.pub=y0;function v0(){gh.unsub(n),Uh.delete(n),vn.clear(),Ph(Fa,Tr,Jd),c.remove(),pt?.remove(),Sn("destroy")}n.destroy=v0;function _h(){Sn("init",i,t),mo(t||i.data,!1),z[w]?ch(w,z[w]):go(),rt=ze.show&&(ze.width>0||ze.height>0),nt=yt=!0,B(i.width,i.height)}return y.forEach(ur),A.forEach(Zi),e?e instanceof HTMLElement?(e.appendChild(c),_h()):e(n,_h):_h(),n}En.assign=un;En.fmtNum=Gh;En.rangeNum=Oa;En.rangeLog=za;En.rangeAsinh=zh;En.orient=Js;En.pxRatio=Ee;En.join=h_;En.fmtDate=Wh,En.tzDate=M_;En.sync=vp;{En.addGap=ix,En.clipGaps=Ha;let i=En.paths={points:Tp};i.linear=Rp,i.stepped=ox,i.bars=ax,i.spline=cx}var Es=132,qa=24,Ya=class{constructor(t,e,n,s,r){this.judged=t;this.within=e;this.further=n;this.atlas=s;this.walk=r}judged;within;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let o of this.charts)o.remove();tn(this.judged),tn(this.within),tn(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(o=>o.columns))].filter(o=>this.isThere(o)),e=new Set(this.atlas.payload.findings.filter(o=>o.joint===this.walk.joint.id).map(o=>o.rule)),n=t.filter(o=>this.walk.facts.bands.some(a=>e.has(a.rule)&&a.columns.includes(o))),s=Object.keys(this.atlas.payload.quantities).filter(o=>!t.includes(o)&&this.isThere(o));for(let[o,a]of[[this.judged,n],[this.within,t.filter(l=>!n.includes(l))],[this.further,s]])for(let l of a){let c=new jh(l,this.atlas,this.walk);this.charts.push(c),o.append(c.root),c.later()}let r=this.within.closest("details");r&&(r.hidden=n.length===t.length),t.length&&!n.length&&this.judged.append($t("p",null,"Every judged quantity is within its limits everywhere.")),t.length||this.judged.append($t("p",null,"No judged quantity was measured along this seam."))}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.further.contains(e.root)||e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},jh=class{constructor(t,e,n){this.column=t;this.atlas=e;this.walk=n;let s=n.facts.bands.filter(u=>u.columns.includes(t));this.edges=s.flatMap(u=>u.edges).filter(u=>u.judged===t);let r=new Set(s.map(u=>u.rule));this.findings=e.payload.findings.filter(u=>u.joint===n.joint.id&&(u.quantity===t||r.has(u.rule)&&!s.some(d=>d.columns.length>1)));let o=e.words,a=o.title(t),l=n.facts.tolerances[t],c=s.filter(u=>u.words).map(u=>`${u.title.toLowerCase()}: ${u.words}`),h=o.unit(t);this.root=$t("figure",{class:"chart","data-column":t},$t("figcaption",null,$t("span",{class:"chart-title"},a,h?` / ${h}`:""),this.here,$t("span",{class:"chart-limits"},[...c,...l?[`tolerance ±${l} ${h}`]:[]].join(" · "))),$t("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;root;plotHost=$t("div",{class:"chart-plot"});spread=$t("div",{class:"chart-spread"});here=$t("b",{class:"chart-here"});cursor=$t("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(n=>{let s=n.summary[this.column],r=this.atlas.words,o=this.walk.joint.contours.length>1?`${n.id}: `:"";if(!s)return`${o}not measured`;let a=(l,c)=>c==null?"":`, ${l} ${r.value(c,this.column)}`;return`${o}least ${r.value(s.min,this.column)}${a("p05",s.p05)}, median ${r.value(s.median,this.column)}${a("p95",s.p95)}, most ${r.value(s.max,this.column)}`}),e=this.walk.joint.summary[this.column]?.outside;return e!==void 0&&t.push(`outside a limit: ${(100*e).toFixed(e>0&&e<.1?1:0)} % of the length`),$t("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=bo(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((l,c)=>{t.push(r+l),e.push(a?.[c]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}range(t){let e=t.filter(c=>c!==null),[n,s]=[Math.min(...e),Math.max(...e)];for(let c of this.edges){let h=bx(c.low),u=Lp(c.high);h!==null&&(n=Math.min(n,h),s=Math.max(s,h)),u!==null&&u-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,u),n=Math.min(n,u))}let r=this.edges.map(c=>Lp(c.low)).filter(c=>c!==null&&c>0);r.length&&this.edges.every(c=>c.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let{tolerances:o}=this.walk.facts,a=o[this.column]??0;n-=a,s+=a;let l=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-l,s+l]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:l}of o){let c=this.walk.joint.contours[a];e[c.id]?.forEach((h,u)=>{h!==null&&r.push([t.valToPos(l+c.stations.s[u],"x",!0),t.valToPos(h,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range(t[1]),s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o={width:s,height:Es,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(a,l,c)=>[l,c]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>sn("soft"),grid:{show:!1},ticks:{stroke:()=>sn("line"),size:4},size:22,font:Dp,gap:3},{stroke:()=>sn("soft"),grid:{stroke:()=>sn("line"),width:1},ticks:{show:!1},size:52,font:Dp,space:26,values:(a,l)=>vx(l,r)}],series:[{},{stroke:()=>sn("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[a=>{this.drawBands(a),this.drawTolerance(a,t)}],draw:[a=>{this.drawFindings(a),this.show()}],ready:[a=>this.listen(a)]}};this.plot=new En(o,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let a=this.plotHost.getBoundingClientRect().width;this.plot&&a>50&&Math.abs(a-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:a,height:Es})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[l,c]of[[a.low,!0],[a.high,!1]]){let h=this.line(t,l);if(h.length<2)continue;let u=c?s+o:s;e.save(),e.beginPath(),h.forEach(([f,g],x)=>x?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(h[h.length-1][0],u),e.lineTo(h[0][0],u),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=sn("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=sn("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=sn("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),h.forEach(([f,g],x)=>x?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=sn("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let l=a;for(;l+1<e.length&&n[l+1]!==null;)l++;o.beginPath();for(let c=a;c<=l;c++)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]+r,"y",!0));for(let c=l;c>=a;c--)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]-r,"y",!0));o.closePath(),o.fill(),a=l}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${Np}`;let a=[];for(let l of this.findings){let c=this.walk.joint.contours.findIndex(d=>d.id===l.contour);if(c<0||l.from_s===null||l.to_s===null||l.severity==="note")continue;let h=r[c].start,u=l.from_s<=l.to_s?[[l.from_s,l.to_s]]:[[l.from_s,this.walk.joint.contours[c].length_mm],[0,l.to_s]];for(let[d,f]of u){let g=t.valToPos(h+d,"x",!0),x=Math.max(t.valToPos(h+f,"x",!0),g+3*o);if(x<t.bbox.left||g>t.bbox.left+t.bbox.width)continue;e.fillStyle=sn(l.waived?"waived":l.severity==="must-fix"?"broken":"near"),e.fillRect(g,n+s-4*o,x-g,4*o);let p=(g+x)/2,m=a.find(y=>Math.abs(y.x-p)<14*o);m?m.findings.push(l):a.push({x:p,findings:[l],colour:String(e.fillStyle)})}}e.textAlign="center";for(let{x:l,findings:c,colour:h}of a)e.fillStyle=h,e.fillText(bs(c),l,n+11*o);e.restore()}drawSpread(t,e,n){tn(this.spread);let s=new Array(qa).fill(0);for(let c of t)c!==null&&s[Math.min(qa-1,Math.max(0,Math.floor((c-e)/(n-e)*qa)))]++;let r=Math.max(1,...s),o=Es-30,a=o/qa,l=mt("svg",{viewBox:`0 0 74 ${Es}`,width:74,height:Es,role:"img","aria-label":"Distribution of the values"});s.forEach((c,h)=>{c&&l.append(mt("rect",{class:"bin",x:4,y:Q(8+o-(h+1)*a),width:Q(Math.max(2,60*Math.sqrt(c/r))),height:Q(a-.7)}))});for(let c of this.edges)for(let h of[c.low,c.high]){if(typeof h!="number"||h<e||h>n)continue;let u=8+o*(1-(h-e)/(n-e));l.append(mt("line",{class:"bin-limit",x1:0,x2:74,y1:Q(u),y2:Q(u)}))}l.append(mt("text",{class:"side",x:4,y:Es-8},"spread √n")),this.spread.append(l)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/En.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${Q(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:Es})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:Es}))}remove(){this.plot?.destroy()}};function vx(i,t){let e=Mx(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":s)}function Mx(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var Za=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),bx=i=>Za(i).length?Math.min(...Za(i)):null,Lp=i=>Za(i).length?Math.max(...Za(i)):null,Np='"Barlow Semi Condensed", "Arial Narrow", sans-serif',Dp=`500 12px ${Np}`;var Ja=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],Sx=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],Up=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function js(i){let t=Up([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(Ja(o,t))<.8)??e[1],s=Ja(n,t),r=Up([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:Sx(t,r),toward:t}}var Nr=(i,t)=>[Ja(i.right,t),Ja(i.up,t)];function Fp(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),l=new Int32Array(e*n).fill(-1),c=new Float32Array(e*n*3),{right:h,up:u,toward:d}=t,f=0;for(let g of i){let{positions:x,triangles:p}=g,m=x.length/3,y=new Float32Array(m),A=new Float32Array(m),M=new Float32Array(m);for(let R=0;R<m;R++){let[w,_,b]=[x[3*R],x[3*R+1],x[3*R+2]];y[R]=(h[0]*w+h[1]*_+h[2]*b-r)*s,A[R]=(o-(u[0]*w+u[1]*_+u[2]*b))*s,M[R]=d[0]*w+d[1]*_+d[2]*b}for(let R=0;R<p.length;R+=3){let[w,_,b]=[p[R],p[R+1],p[R+2]],F=(y[_]-y[w])*(A[b]-A[w])-(A[_]-A[w])*(y[b]-y[w]);if(Math.abs(F)<1e-9)continue;let I=-((M[_]-M[w])*(A[b]-A[w])-(M[b]-M[w])*(A[_]-A[w]))/F,C=-((M[b]-M[w])*(y[_]-y[w])-(M[_]-M[w])*(y[b]-y[w]))/F,V=Math.max(0,Math.ceil(Math.min(y[w],y[_],y[b])-.5)),U=Math.min(e-1,Math.floor(Math.max(y[w],y[_],y[b])-.5)),P=Math.max(0,Math.ceil(Math.min(A[w],A[_],A[b])-.5)),z=Math.min(n-1,Math.floor(Math.max(A[w],A[_],A[b])-.5)),$=Math.hypot(I/s,C/s,1/s/s)||1,O=[I*s,-C*s,1],st=Math.hypot(O[0],O[1],O[2])||$,W=f+(g.face.length?g.face[R/3]:0);for(let q=P;q<=z;q++)for(let et=V;et<=U;et++){let ht=((et+.5-y[w])*(A[b]-A[w])-(q+.5-A[w])*(y[b]-y[w]))/F,ut=((q+.5-A[w])*(y[_]-y[w])-(et+.5-y[w])*(A[_]-A[w]))/F;if(ht<-1e-6||ut<-1e-6||ht+ut>1+1e-6)continue;let K=M[w]+ht*(M[_]-M[w])+ut*(M[b]-M[w]),gt=q*e+et;K<=a[gt]||(a[gt]=K,l[gt]=W,c[3*gt]=O[0]/st,c[3*gt+1]=O[1]/st,c[3*gt+2]=O[2]/st)}}f+=1e6}return{width:e,height:n,depth:a,face:l,normal:c}}function Op(i,t,e,n,s,r){let{width:o,height:a,depth:l,face:c,normal:h}=t,u=i.data,d=(p,m,y)=>{for(let A=0;A<3;A++)u[4*p+A]+=(m[A]-u[4*p+A])*y},[f,g]=[1/0,-1/0];for(let p of l)p>-1/0&&(p<f&&(f=p),p>g&&(g=p));let x=Math.max(1e-6,g-f);for(let p=0;p<o*a;p++){if(c[p]<0)continue;let m=-.5*h[3*p]+.5*h[3*p+1],y=.12*(1-(l[p]-f)/x)+Math.max(0,-m)*.3+(1-h[3*p+2])*.1;d(p,e,s),d(p,n,Math.min(.5,y)*s)}for(let p=0;p<a-1;p++)for(let m=0;m<o-1;m++){let y=p*o+m,A=0;for(let M of[y+1,y+o]){if(c[y]===c[M])continue;if(c[y]<0||c[M]<0){A=1;continue}h[3*y]*h[3*M]+h[3*y+1]*h[3*M+1]+h[3*y+2]*h[3*M+2]<.97&&(A=Math.max(A,.6)),Math.abs(l[y]-l[M])>.15&&(A=Math.max(A,.85))}A&&d(y,n,A*r)}}var Po=["unknown","within","near","broken","waived","look","noted"];var ja=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let l of this.listeners)l(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,l)=>a+l.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,l)=>{let c={contour:l,start:r,length:a.length_mm};return r+=a.length_mm+s,c}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:tu(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding"){if(t.contour===null||t.station===null)return;let n=this.payload.joints.findIndex(r=>r.id===t.joint),s=this.payload.joints[n].contours.findIndex(r=>r.id===t.contour);this.go({joint:n,contour:s,station:t.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).map(a=>{let l=this.joint.contours.findIndex(c=>c.id===a.contour);return{finding:a,at:e[l].start+this.joint.contours[l].stations.s[a.station]}}).sort((a,l)=>a.at-l.at||a.finding.n-l.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return(t>0?r[0]??s[0]:r.at(-1)??s.at(-1)).finding}findingsHere(t=this.place){let e=this.payload.joints[t.joint];return Kh(this.payload.findings,e,e.contours[t.contour],t.station)}},wx=1;function Kh(i,t,e,n){let s=e.stations.s;return i.filter(r=>r.joint!==t.id||r.contour!==e.id||r.station===null?!1:r.from_s!==null&&r.to_s!==null?Qh(r,s[n]):r.everywhere||n===r.station||Math.abs(s[n]-s[r.station])<=wx)}var Ka=i=>i.severity==="note"&&(i.from_s!==null||i.everywhere);function Qh(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function tu(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}var tl=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;tn(t),t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=$t("canvas",{"aria-hidden":!0});overlay=mt("svg",{role:"group"});cursor=mt("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=js(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],l=(g,x)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,x),a=Math.max(a,x)};for(let g of this.walk.joint.contours)ri(g).forEach(x=>l(...Nr(n,x)));let c=new Set([...this.walk.joint.cover,...this.walk.joint.base]),h=this.atlas.meshes.filter(g=>c.has(g.part));for(let g of h)for(let x=0;x<g.positions.length;x+=3)l(...Nr(n,[g.positions[x],g.positions[x+1],g.positions[x+2]]));let u=t?34:40,d=Math.min((e.width-2*u)/Math.max(1e-6,r-s),(e.height-2*u)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(h,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=u=>Tx(sn(u)),l=o.createImageData(s,r),c=a("sheet");for(let u=0;u<s*r;u++)l.data.set([...c,255],4*u);let h=new Set(this.walk.joint.cover);for(let u of[!1,!0]){let d=t.filter(g=>h.has(g.part)===u);if(!d.length)continue;let f=Fp(d,e.plane,s,r,e.scale*n,e.x,e.y);Op(l,f,a(u?"cover-fill":"base-fill"),a("ink"),u?.6:.9,u?.55:.25)}o.putImageData(l,0,0)}at(t){let[e,n]=Nr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){tn(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${Q(t.width)} ${Q(t.height)}`),this.overlay.setAttribute("aria-label","The seam seen along the light, with the findings as numbered section marks");let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=ri(n).map(r=>this.at(r));this.overlay.append(mt("path",{class:"seam casing",d:Io(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let l=o+1<s.length?o+1:o,c=s.slice(r,l+1);n.closed&&o===s.length-1&&c.push(s[0]),this.overlay.append(mt("path",{class:`seam ${Po[a]}`,d:Io(c,!1)})),a===3&&this.overlay.append(mt("path",{class:"seam broken-core",d:Io(c,!1)}))}}this.drawPlaces(),this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawMarks(){let t=[];for(let s of this.atlas.payload.findings){if(s.joint!==this.walk.joint.id||s.station===null||Ka(s))continue;let r=this.walk.joint.contours.find(u=>u.id===s.contour);if(!r)continue;let[o,a]=this.at(ri(r)[s.station]),[l,c]=this.normal(r,s.station),h=t.find(u=>Math.hypot(u.x-o,u.y-a)<18);h?h.findings.push(s):t.push({x:o,y:a,nx:l,ny:c,findings:[s]})}let e=t.length>8?Pa:bs,n=s=>e(s.findings).length*4+2;for(let s=0;s<t.length;s++)for(let r=s+1;r<t.length;r++){let[o,a]=[t[s],t[r]],[l,c]=[Math.abs(o.x+o.nx*31-a.x-a.nx*31),Math.abs(o.y+o.ny*31-a.y-a.ny*31)];l>n(o)+n(a)||c>17||(o.findings=[...o.findings,...a.findings].sort((h,u)=>h.n-u.n),t.splice(r,1),r=s)}for(let{x:s,y:r,nx:o,ny:a,findings:l}of t){let c=l[0],h=c.waived?"waived":c.severity,u=mt("g",{class:`section-mark ${h}`,tabindex:0,role:"button","data-finding":c.n,"aria-label":`Finding ${l.map(x=>x.n).join(", ")}: ${c.title}`});for(let x of[1,-1]){let[p,m]=[s+x*o*8,r+x*a*8],[y,A]=[s+x*o*19,r+x*a*19];u.append(mt("path",{class:"cut",d:`M${Q(p)} ${Q(m)}L${Q(y)} ${Q(A)}`}),mt("path",{class:"cut-arrow",d:Ex(y,A,-a,o)}))}let[d,f]=[s+o*31,r+a*31];u.append(mt("circle",{class:"target",cx:Q(s),cy:Q(r),r:13}),mt("text",{x:Q(d),y:Q(f),"text-anchor":"middle","dominant-baseline":"central"},e(l)));let g=x=>{x.stopPropagation(),this.walk.showFinding(c)};u.addEventListener("click",g),u.addEventListener("pointerdown",x=>x.stopPropagation()),u.addEventListener("keydown",x=>{(x.key==="Enter"||x.key===" ")&&(x.preventDefault(),g(x))}),this.overlay.append(u)}}drawPlaces(){for(let t of this.atlas.payload.findings){let e=this.walk.joint.contours.find(l=>l.id===t.contour);if(t.joint!==this.walk.joint.id||!t.at||!e||t.station===null||t.from_s!==null)continue;let[n,s]=this.at(t.at),[r,o]=this.at(ri(e)[t.station]),a=mt("g",{class:`place-mark ${t.waived?"waived":t.severity}`,"data-place-of":t.n},mt("title",null,`Finding ${t.n}: ${t.title}${t.value==="–"?"":`, ${t.value}`}`),mt("path",{d:`M${Q(n-5)} ${Q(s-5)}L${Q(n+5)} ${Q(s+5)}M${Q(n-5)} ${Q(s+5)}L${Q(n+5)} ${Q(s-5)}`}));Math.hypot(n-r,s-o)>4&&a.append(mt("path",{class:"reach",d:`M${Q(r)} ${Q(o)}L${Q(n)} ${Q(s)}`})),this.overlay.append(a)}}normal(t,e){let[n,s]=Nr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=mt("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,l]=Nr(t.plane,o);if(Math.hypot(a,l)<.3)return;let c=[e[0]+a*20,e[1]-l*20];n.append(mt("path",{d:`M${Q(e[0])} ${Q(e[1])}L${Q(c[0])} ${Q(c[1])}`}),mt("text",{x:Q(c[0]+a*7),y:Q(c[1]-l*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(ri(e)[t.station]),[r,o]=this.normal(e,t.station);tn(this.cursor),this.cursor.append(...[1,-1].flatMap(a=>["casing",""].map(l=>mt("path",{class:l,d:`M${Q(n+a*r*6)} ${Q(s+a*o*6)}L${Q(n+a*r*17)} ${Q(s+a*o*17)}`})))),this.lens(t),this.cursor.setAttribute("data-x",Q(n)),this.cursor.setAttribute("data-y",Q(s))}lens(t){let e=this.view,{joint:n,contour:s,facts:r}=this.walk,o=this.walk.findingsHere().find(I=>I.from_s!==null&&I.severity!=="note");if(!o)return;let{s:a}=s.stations,l=ri(s).map(I=>this.at(I)),c=a.flatMap((I,C)=>Qh(o,I)?[C]:[]),h=c.map(I=>l[I]),u=Math.max(...h.map(I=>Math.hypot(I[0]-h[0][0],I[1]-h[0][1])));if(!c.length||u>26)return;let d=Math.max(30,Math.min(58,Math.min(e.width,e.height)*.15)),[f,g]=l[t.station],x=n.contours.flatMap(I=>ri(I).map(C=>this.at(C))),p=(I,C)=>Math.min(...x.map(V=>Math.hypot(V[0]-I,V[1]-C)),I,C,e.width-I,e.height-C)-d,m=[];for(let I=1;I<8;I++)for(let C=1;C<8;C++)m.push([e.width*I/8,e.height*C/8]);let y=m.filter(([I,C])=>p(I,C)>4);if(!y.length)return;let[A,M]=y.reduce((I,C)=>Math.hypot(I[0]-f,I[1]-g)<=Math.hypot(C[0]-f,C[1]-g)?I:C),R=Math.max(2,Math.min(8,d*.9/Math.max(u,4))),w=I=>[A+(I[0]-f)*R,M+(I[1]-g)*R],_=Math.hypot(A-f,M-g),b=mt("g",{class:"plan-lens","data-finding":o.n},mt("path",{class:"tie",d:`M${Q(f)} ${Q(g)}L${Q(A-(A-f)/_*d)} ${Q(M-(M-g)/_*d)}`}),mt("circle",{class:"rim",cx:Q(A),cy:Q(M),r:Q(d)})),F=mt("g",{"clip-path":"url(#plan-lens-rim)"});b.append(mt("clipPath",{id:"plan-lens-rim"},mt("circle",{cx:Q(A),cy:Q(M),r:Q(d-1)})),F);for(let[I,C,V]of r.worst[s.id]??[]){let U=l.slice(I,(C+1<l.length?C+1:C)+1);s.closed&&C===l.length-1&&U.push(l[0]),F.append(mt("path",{class:`seam ${Po[V]}`,d:Io(U.map(w),!1)})),V===3&&F.append(mt("path",{class:"seam broken-core",d:Io(U.map(w),!1)}))}b.append(mt("text",{x:Q(A),y:Q(M+d+13),"text-anchor":"middle"},`${Math.round(R)} times larger`)),this.cursor.append(b)}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>ri(r).forEach((a,l)=>{let[c,h]=this.at(a),u=Math.hypot(c-t,h-e);u<s&&(s=u,n={contour:o,station:l})})),this.walk.go(n,"plan")}},Bp=new WeakMap;function ri(i){let t=Bp.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),Bp.set(i,t)}return t}function Io(i,t){return"M"+i.map(([e,n])=>`${Q(e)} ${Q(n)}`).join("L")+(t?"Z":"")}function Ex(i,t,e,n){return`M${Q(i+e*9)} ${Q(t+n*9)}L${Q(i-n*3.4)} ${Q(t+e*3.4)}L${Q(i+n*3.4)} ${Q(t-e*3.4)}Z`}function Tx(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var Bs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},ks={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},fm=0,Cu=1,pm=2;var ca=1,mm=2,ro=3,Pi=0,In=1,Yn=2,rr=0,oo=1,Pu=2,Iu=3,Lu=4,gm=5;var or=100,_m=101,xm=102,ym=103,vm=104,Mm=200,bm=201,Sm=202,wm=203,Du=204,Nu=205,Em=206,Tm=207,Am=208,Rm=209,Cm=210,Pm=211,Im=212,Lm=213,Dm=214,El=0,Tl=1,Al=2,Zr=3,Rl=4,Cl=5,Pl=6,Il=7,ic=0,Nm=1,Um=2,$i=0,Uu=1,Fu=2,Ou=3,Bu=4,ku=5,zu=6,Vu=7;var Gu=300,ar=301,ao=302,sc=303,rc=304,Ll=1e3,Wi=1001,Dl=1002,An=1003,Fm=1004;var ha=1005;var qn=1006,oc=1007;var fs=1008;var Jn=1009,Hu=1010,Wu=1011,lo=1012,ac=1013,Ii=1014,Li=1015,Di=1016,lc=1017,cc=1018,lr=1020,Xu=35902,$u=35899,qu=1021,Yu=1022,Ni=1023,ls=1026,ps=1027,Zu=1028,hc=1029,zs=1030,uc=1031;var dc=1033,ua=33776,da=33777,fa=33778,pa=33779,fc=35840,pc=35841,mc=35842,gc=35843,_c=36196,xc=37492,yc=37496,vc=37488,Mc=37489,ma=37490,bc=37491,Sc=37808,wc=37809,Ec=37810,Tc=37811,Ac=37812,Rc=37813,Cc=37814,Pc=37815,Ic=37816,Lc=37817,Dc=37818,Nc=37819,Uc=37820,Fc=37821,Oc=36492,Bc=36494,kc=36495,zc=36283,Vc=36284,ga=36285,Gc=36286;var zo=2300,Nl=2301,Sl=2302,bu=2303,Su=2400,wu=2401,Eu=2402;var Om=3200;var Hc=0,Bm=1,ms="",li="srgb",Vo="srgb-linear",Go="linear",Re="srgb";var wl=7680;var km=519,zm=512,Vm=513,Gm=514,Ju=515,Hm=516,Wm=517,ju=518,Ku=519,Xm=35044;var Qu="300 es",_i=2e3,Jr=2001;function Ax(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function Rx(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function Ho(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function $m(){let i=Ho("canvas");return i.style.display="block",i}var kp={},jr=null;function td(...i){let t="THREE."+i.shift();jr?jr("log",t,...i):console.log(t,...i)}function qm(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Yt(...i){i=qm(i);let t="THREE."+i.shift();if(jr)jr("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ee(...i){i=qm(i);let t="THREE."+i.shift();if(jr)jr("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Oo(...i){let t=i.join(" ");t in kp||(kp[t]=!0,Yt(...i))}function Ym(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var Zm={[El]:El,[Al]:Pl,[Rl]:Rl,[Zr]:Cl,[Tl]:Tl,[Pl]:Al,[Il]:Il,[Cl]:Zr},Ci=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Dn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],zp=1234567,Bo=Math.PI/180,Kr=180/Math.PI;function co(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Dn[i&255]+Dn[i>>8&255]+Dn[i>>16&255]+Dn[i>>24&255]+"-"+Dn[t&255]+Dn[t>>8&255]+"-"+Dn[t>>16&15|64]+Dn[t>>24&255]+"-"+Dn[e&63|128]+Dn[e>>8&255]+"-"+Dn[e>>16&255]+Dn[e>>24&255]+Dn[n&255]+Dn[n>>8&255]+Dn[n>>16&255]+Dn[n>>24&255]).toLowerCase()}function me(i,t,e){return Math.max(t,Math.min(e,i))}function ed(i,t){return(i%t+t)%t}function Cx(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function Px(i,t,e){return i!==t?(e-i)/(t-i):0}function ko(i,t,e){return(1-e)*i+e*t}function Ix(i,t,e,n){return ko(i,t,1-Math.exp(-e*n))}function Lx(i,t=1){return t-Math.abs(ed(i,t*2)-t)}function Dx(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function Nx(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function Ux(i,t){return i+Math.floor(Math.random()*(t-i+1))}function Fx(i,t){return i+Math.random()*(t-i)}function Ox(i){return i*(.5-Math.random())}function Bx(i){i!==void 0&&(zp=i);let t=zp+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function kx(i){return i*Bo}function zx(i){return i*Kr}function Vx(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function Gx(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function nd(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function Hx(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),u=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*u,l*d,a*c);break;case"YZY":i.set(l*d,a*h,l*u,a*c);break;case"ZXZ":i.set(l*u,l*d,a*h,a*c);break;case"XZX":i.set(a*h,l*g,l*f,a*c);break;case"YXY":i.set(l*f,a*h,l*g,a*c);break;case"ZYZ":i.set(l*g,l*f,a*h,a*c);break;default:Yt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function id(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Jm(i,t){if(t.constructor===Float32Array)return i;let e=id(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function jm(i,t){if(t.constructor===Float32Array)return i;let e=id(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var sd={DEG2RAD:Bo,RAD2DEG:Kr,generateUUID:co,clamp:me,euclideanModulo:ed,mapLinear:Cx,inverseLerp:Px,lerp:ko,damp:Ix,pingpong:Lx,smoothstep:Dx,smootherstep:Nx,randInt:Ux,randFloat:Fx,randFloatSpread:Ox,seededRandom:Bx,degToRad:kx,radToDeg:zx,isPowerOfTwo:Vx,ceilPowerOfTwo:Gx,floorPowerOfTwo:nd,setQuaternionFromProperEuler:Hx,normalize:jm,denormalize:Jm},ne=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},ci=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],u=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],x=r[o+3];if(u!==x||l!==d||c!==f||h!==g){let p=l*d+c*f+h*g+u*x;p<0&&(d=-d,f=-f,g=-g,x=-x,p=-p);let m=1-a;if(p<.9995){let y=Math.acos(p),A=Math.sin(y);m=Math.sin(m*y)/A,a=Math.sin(a*y)/A,l=l*m+d*a,c=c*m+f*a,h=h*m+g*a,u=u*m+x*a}else{l=l*m+d*a,c=c*m+f*a,h=h*m+g*a,u=u*m+x*a;let y=1/Math.sqrt(l*l+c*c+h*h+u*u);l*=y,c*=y,h*=y,u*=y}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=u}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],u=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+h*u+l*f-c*d,t[e+1]=l*g+h*d+c*u-a*f,t[e+2]=c*g+h*f+a*d-l*u,t[e+3]=h*g-a*u-l*d-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),u=a(r/2),d=l(n/2),f=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"YXZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"ZXY":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"ZYX":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"YZX":this._x=d*h*u+c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u-d*f*g;break;case"XZY":this._x=d*h*u-c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u+d*f*g;break;default:Yt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],u=e[10],d=n+a+u;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>u){let f=2*Math.sqrt(1+n-a-u);this._w=(h-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>u){let f=2*Math.sqrt(1+a-n-u);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+u-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(me(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},X=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(Vp.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(Vp.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),u=2*(r*n-o*e);return this.x=e+l*c+o*u-a*h,this.y=n+l*h+a*c-r*u,this.z=s+l*u+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return eu.copy(this).projectOnVector(t),this.sub(eu)}reflect(t){return this.sub(eu.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},eu=new X,Vp=new ci,ie=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],u=n[7],d=n[2],f=n[5],g=n[8],x=s[0],p=s[3],m=s[6],y=s[1],A=s[4],M=s[7],R=s[2],w=s[5],_=s[8];return r[0]=o*x+a*y+l*R,r[3]=o*p+a*A+l*w,r[6]=o*m+a*M+l*_,r[1]=c*x+h*y+u*R,r[4]=c*p+h*A+u*w,r[7]=c*m+h*M+u*_,r[2]=d*x+f*y+g*R,r[5]=d*p+f*A+g*w,r[8]=d*m+f*M+g*_,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=h*o-a*c,d=a*l-h*r,f=c*r-o*l,g=e*u+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let x=1/g;return t[0]=u*x,t[1]=(s*c-h*n)*x,t[2]=(a*n-s*o)*x,t[3]=d*x,t[4]=(h*e-s*l)*x,t[5]=(s*r-a*e)*x,t[6]=f*x,t[7]=(n*l-c*e)*x,t[8]=(o*e-n*r)*x,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Oo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(nu.makeScale(t,e)),this}rotate(t){return Oo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(nu.makeRotation(-t)),this}translate(t,e){return Oo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(nu.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},nu=new ie,Gp=new ie().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Hp=new ie().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function Wx(){let i={enabled:!0,workingColorSpace:Vo,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Re&&(s.r=as(s.r),s.g=as(s.g),s.b=as(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Re&&(s.r=Yr(s.r),s.g=Yr(s.g),s.b=Yr(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===ms?Go:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[Vo]:{primaries:t,whitePoint:n,transfer:Go,toXYZ:Gp,fromXYZ:Hp,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:li},outputColorSpaceConfig:{drawingBufferColorSpace:li}},[li]:{primaries:t,whitePoint:n,transfer:Re,toXYZ:Gp,fromXYZ:Hp,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:li}}}),i}var ve=Wx();function as(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function Yr(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Ur,Ul=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Ur===void 0&&(Ur=Ho("canvas")),Ur.width=t.width,Ur.height=t.height;let s=Ur.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Ur}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=Ho("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=as(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(as(e[n]/255)*255):e[n]=as(e[n]);return{data:e,width:t.width,height:t.height}}else return Yt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},Xx=0,Qr=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:Xx++}),this.uuid=co(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(iu(s[o].image)):r.push(iu(s[o]))}else r=iu(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function iu(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Ul.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Yt("Texture: Unable to serialize Texture."),{})}var $x=0,su=new X,Zn=class i extends Ci{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Wi,s=Wi,r=qn,o=fs,a=Ni,l=Jn,c=i.DEFAULT_ANISOTROPY,h=ms){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:$x++}),this.uuid=co(),this.name="",this.source=new Qr(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new ne(0,0),this.repeat=new ne(1,1),this.center=new ne(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new ie,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(su).x}get height(){return this.source.getSize(su).y}get depth(){return this.source.getSize(su).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Yt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Yt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==Gu)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Ll:t.x=t.x-Math.floor(t.x);break;case Wi:t.x=t.x<0?0:1;break;case Dl:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Ll:t.y=t.y-Math.floor(t.y);break;case Wi:t.y=t.y<0?0:1;break;case Dl:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Zn.DEFAULT_IMAGE=null;Zn.DEFAULT_MAPPING=Gu;Zn.DEFAULT_ANISOTROPY=1;var qe=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],u=l[8],d=l[1],f=l[5],g=l[9],x=l[2],p=l[6],m=l[10];if(Math.abs(h-d)<.01&&Math.abs(u-x)<.01&&Math.abs(g-p)<.01){if(Math.abs(h+d)<.1&&Math.abs(u+x)<.1&&Math.abs(g+p)<.1&&Math.abs(c+f+m-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let A=(c+1)/2,M=(f+1)/2,R=(m+1)/2,w=(h+d)/4,_=(u+x)/4,b=(g+p)/4;return A>M&&A>R?A<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(A),s=w/n,r=_/n):M>R?M<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(M),n=w/s,r=b/s):R<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(R),n=_/r,s=b/r),this.set(n,s,r,e),this}let y=Math.sqrt((p-g)*(p-g)+(u-x)*(u-x)+(d-h)*(d-h));return Math.abs(y)<.001&&(y=1),this.x=(p-g)/y,this.y=(u-x)/y,this.z=(d-h)/y,this.w=Math.acos((c+f+m-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this.w=me(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this.w=me(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Fl=class extends Ci{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:qn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new qe(0,0,t,e),this.scissorTest=!1,this.viewport=new qe(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Zn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:qn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new Qr(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},hi=class extends Fl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},Wo=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Wi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Ol=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Wi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var We=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,u,d,f,g,x,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,x,p)}set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,x,p){let m=this.elements;return m[0]=t,m[4]=e,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=h,m[10]=u,m[14]=d,m[3]=f,m[7]=g,m[11]=x,m[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Fr.setFromMatrixColumn(t,0).length(),r=1/Fr.setFromMatrixColumn(t,1).length(),o=1/Fr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),u=Math.sin(r);if(t.order==="XYZ"){let d=o*h,f=o*u,g=a*h,x=a*u;e[0]=l*h,e[4]=-l*u,e[8]=c,e[1]=f+g*c,e[5]=d-x*c,e[9]=-a*l,e[2]=x-d*c,e[6]=g+f*c,e[10]=o*l}else if(t.order==="YXZ"){let d=l*h,f=l*u,g=c*h,x=c*u;e[0]=d+x*a,e[4]=g*a-f,e[8]=o*c,e[1]=o*u,e[5]=o*h,e[9]=-a,e[2]=f*a-g,e[6]=x+d*a,e[10]=o*l}else if(t.order==="ZXY"){let d=l*h,f=l*u,g=c*h,x=c*u;e[0]=d-x*a,e[4]=-o*u,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*h,e[9]=x-d*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let d=o*h,f=o*u,g=a*h,x=a*u;e[0]=l*h,e[4]=g*c-f,e[8]=d*c+x,e[1]=l*u,e[5]=x*c+d,e[9]=f*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let d=o*l,f=o*c,g=a*l,x=a*c;e[0]=l*h,e[4]=x-d*u,e[8]=g*u+f,e[1]=u,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=f*u+g,e[10]=d-x*u}else if(t.order==="XZY"){let d=o*l,f=o*c,g=a*l,x=a*c;e[0]=l*h,e[4]=-u,e[8]=c*h,e[1]=d*u+x,e[5]=o*h,e[9]=f*u-g,e[2]=g*u-f,e[6]=a*h,e[10]=x*u+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(qx,t,Yx)}lookAt(t,e,n){let s=this.elements;return oi.subVectors(t,e),oi.lengthSq()===0&&(oi.z=1),oi.normalize(),Ts.crossVectors(n,oi),Ts.lengthSq()===0&&(Math.abs(n.z)===1?oi.x+=1e-4:oi.z+=1e-4,oi.normalize(),Ts.crossVectors(n,oi)),Ts.normalize(),el.crossVectors(oi,Ts),s[0]=Ts.x,s[4]=el.x,s[8]=oi.x,s[1]=Ts.y,s[5]=el.y,s[9]=oi.y,s[2]=Ts.z,s[6]=el.z,s[10]=oi.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],u=n[5],d=n[9],f=n[13],g=n[2],x=n[6],p=n[10],m=n[14],y=n[3],A=n[7],M=n[11],R=n[15],w=s[0],_=s[4],b=s[8],F=s[12],I=s[1],C=s[5],V=s[9],U=s[13],P=s[2],z=s[6],$=s[10],O=s[14],st=s[3],W=s[7],q=s[11],et=s[15];return r[0]=o*w+a*I+l*P+c*st,r[4]=o*_+a*C+l*z+c*W,r[8]=o*b+a*V+l*$+c*q,r[12]=o*F+a*U+l*O+c*et,r[1]=h*w+u*I+d*P+f*st,r[5]=h*_+u*C+d*z+f*W,r[9]=h*b+u*V+d*$+f*q,r[13]=h*F+u*U+d*O+f*et,r[2]=g*w+x*I+p*P+m*st,r[6]=g*_+x*C+p*z+m*W,r[10]=g*b+x*V+p*$+m*q,r[14]=g*F+x*U+p*O+m*et,r[3]=y*w+A*I+M*P+R*st,r[7]=y*_+A*C+M*z+R*W,r[11]=y*b+A*V+M*$+R*q,r[15]=y*F+A*U+M*O+R*et,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],u=t[6],d=t[10],f=t[14],g=t[3],x=t[7],p=t[11],m=t[15],y=l*f-c*d,A=a*f-c*u,M=a*d-l*u,R=o*f-c*h,w=o*d-l*h,_=o*u-a*h;return e*(x*y-p*A+m*M)-n*(g*y-p*R+m*w)+s*(g*A-x*R+m*_)-r*(g*M-x*w+p*_)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=t[9],d=t[10],f=t[11],g=t[12],x=t[13],p=t[14],m=t[15],y=e*a-n*o,A=e*l-s*o,M=e*c-r*o,R=n*l-s*a,w=n*c-r*a,_=s*c-r*l,b=h*x-u*g,F=h*p-d*g,I=h*m-f*g,C=u*p-d*x,V=u*m-f*x,U=d*m-f*p,P=y*U-A*V+M*C+R*I-w*F+_*b;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let z=1/P;return t[0]=(a*U-l*V+c*C)*z,t[1]=(s*V-n*U-r*C)*z,t[2]=(x*_-p*w+m*R)*z,t[3]=(d*w-u*_-f*R)*z,t[4]=(l*I-o*U-c*F)*z,t[5]=(e*U-s*I+r*F)*z,t[6]=(p*M-g*_-m*A)*z,t[7]=(h*_-d*M+f*A)*z,t[8]=(o*V-a*I+c*b)*z,t[9]=(n*I-e*V-r*b)*z,t[10]=(g*w-x*M+m*y)*z,t[11]=(u*M-h*w-f*y)*z,t[12]=(a*F-o*C-l*b)*z,t[13]=(e*C-n*F+s*b)*z,t[14]=(x*A-g*R-p*y)*z,t[15]=(h*R-u*A+d*y)*z,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,u=a+a,d=r*c,f=r*h,g=r*u,x=o*h,p=o*u,m=a*u,y=l*c,A=l*h,M=l*u,R=n.x,w=n.y,_=n.z;return s[0]=(1-(x+m))*R,s[1]=(f+M)*R,s[2]=(g-A)*R,s[3]=0,s[4]=(f-M)*w,s[5]=(1-(d+m))*w,s[6]=(p+y)*w,s[7]=0,s[8]=(g+A)*_,s[9]=(p-y)*_,s[10]=(1-(d+x))*_,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Fr.set(s[0],s[1],s[2]).length(),a=Fr.set(s[4],s[5],s[6]).length(),l=Fr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ei.copy(this);let c=1/o,h=1/a,u=1/l;return Ei.elements[0]*=c,Ei.elements[1]*=c,Ei.elements[2]*=c,Ei.elements[4]*=h,Ei.elements[5]*=h,Ei.elements[6]*=h,Ei.elements[8]*=u,Ei.elements[9]*=u,Ei.elements[10]*=u,e.setFromRotationMatrix(Ei),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=_i,l=!1){let c=this.elements,h=2*r/(e-t),u=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,x;if(l)g=r/(o-r),x=o*r/(o-r);else if(a===_i)g=-(o+r)/(o-r),x=-2*o*r/(o-r);else if(a===Jr)g=-o/(o-r),x=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=u,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=x,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=_i,l=!1){let c=this.elements,h=2/(e-t),u=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,x;if(l)g=1/(o-r),x=o/(o-r);else if(a===_i)g=-2/(o-r),x=-(o+r)/(o-r);else if(a===Jr)g=-1/(o-r),x=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=u,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=x,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Fr=new X,Ei=new We,qx=new X(0,0,0),Yx=new X(1,1,1),Ts=new X,el=new X,oi=new X,Wp=new We,Xp=new ci,cs=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],u=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(me(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-me(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-u,r),this._z=0);break;case"ZXY":this._x=Math.asin(me(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-u,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-me(u,-1,1)),Math.abs(u)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(me(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-u,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-me(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:Yt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Wp.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Wp,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Xp.setFromEuler(this),this.setFromQuaternion(Xp,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};cs.DEFAULT_ORDER="XYZ";var Xo=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},Zx=0,$p=new X,Or=new ci,ns=new We,nl=new X,Lo=new X,Jx=new X,jx=new ci,qp=new X(1,0,0),Yp=new X(0,1,0),Zp=new X(0,0,1),Jp={type:"added"},Kx={type:"removed"},Br={type:"childadded",child:null},ru={type:"childremoved",child:null},Fn=class i extends Ci{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:Zx++}),this.uuid=co(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new X,e=new cs,n=new ci,s=new X(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new We},normalMatrix:{value:new ie}}),this.matrix=new We,this.matrixWorld=new We,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Xo,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Or.setFromAxisAngle(t,e),this.quaternion.multiply(Or),this}rotateOnWorldAxis(t,e){return Or.setFromAxisAngle(t,e),this.quaternion.premultiply(Or),this}rotateX(t){return this.rotateOnAxis(qp,t)}rotateY(t){return this.rotateOnAxis(Yp,t)}rotateZ(t){return this.rotateOnAxis(Zp,t)}translateOnAxis(t,e){return $p.copy(t).applyQuaternion(this.quaternion),this.position.add($p.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(qp,t)}translateY(t){return this.translateOnAxis(Yp,t)}translateZ(t){return this.translateOnAxis(Zp,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(ns.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?nl.copy(t):nl.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Lo.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ns.lookAt(Lo,nl,this.up):ns.lookAt(nl,Lo,this.up),this.quaternion.setFromRotationMatrix(ns),s&&(ns.extractRotation(s.matrixWorld),Or.setFromRotationMatrix(ns),this.quaternion.premultiply(Or.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ee("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(Jp),Br.child=t,this.dispatchEvent(Br),Br.child=null):ee("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(Kx),ru.child=t,this.dispatchEvent(ru),ru.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),ns.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),ns.multiply(t.parent.matrixWorld)),t.applyMatrix4(ns),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(Jp),Br.child=t,this.dispatchEvent(Br),Br.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Lo,t,Jx),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Lo,jx,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let u=l[c];r(t.shapes,u)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),u=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),u.length>0&&(n.shapes=u),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Fn.DEFAULT_UP=new X(0,1,0);Fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Ri=class extends Fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},Qx={type:"move"},to=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Ri,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Ri,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new X,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new X),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Ri,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new X,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new X,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let x of t.hand.values()){let p=e.getJointPose(x,n),m=this._getHandJoint(c,x);p!==null&&(m.matrix.fromArray(p.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=p.radius),m.visible=p!==null}let h=c.joints["index-finger-tip"],u=c.joints["thumb-tip"],d=h.position.distanceTo(u.position),f=.02,g=.005;c.inputState.pinching&&d>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&d<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(Qx)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Ri;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},Km={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},As={h:0,s:0,l:0},il={h:0,s:0,l:0};function ou(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var oe=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=li){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ve.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=ve.workingColorSpace){return this.r=t,this.g=e,this.b=n,ve.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=ve.workingColorSpace){if(t=ed(t,1),e=me(e,0,1),n=me(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=ou(o,r,t+1/3),this.g=ou(o,r,t),this.b=ou(o,r,t-1/3)}return ve.colorSpaceToWorking(this,s),this}setStyle(t,e=li){function n(r){r!==void 0&&parseFloat(r)<1&&Yt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Yt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Yt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=li){let n=Km[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Yt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=as(t.r),this.g=as(t.g),this.b=as(t.b),this}copyLinearToSRGB(t){return this.r=Yr(t.r),this.g=Yr(t.g),this.b=Yr(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=li){return ve.workingToColorSpace(Nn.copy(this),t),Math.round(me(Nn.r*255,0,255))*65536+Math.round(me(Nn.g*255,0,255))*256+Math.round(me(Nn.b*255,0,255))}getHexString(t=li){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=ve.workingColorSpace){ve.workingToColorSpace(Nn.copy(this),e);let n=Nn.r,s=Nn.g,r=Nn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let u=o-a;switch(c=h<=.5?u/(o+a):u/(2-o-a),o){case n:l=(s-r)/u+(s<r?6:0);break;case s:l=(r-n)/u+2;break;case r:l=(n-s)/u+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=ve.workingColorSpace){return ve.workingToColorSpace(Nn.copy(this),e),t.r=Nn.r,t.g=Nn.g,t.b=Nn.b,t}getStyle(t=li){ve.workingToColorSpace(Nn.copy(this),t);let e=Nn.r,n=Nn.g,s=Nn.b;return t!==li?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(As),this.setHSL(As.h+t,As.s+e,As.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(As),t.getHSL(il);let n=ko(As.h,il.h,e),s=ko(As.s,il.s,e),r=ko(As.l,il.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Nn=new oe;oe.NAMES=Km;var $o=class extends Fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new cs,this.environmentIntensity=1,this.environmentRotation=new cs,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Ti=new X,is=new X,au=new X,ss=new X,kr=new X,zr=new X,jp=new X,lu=new X,cu=new X,hu=new X,uu=new qe,du=new qe,fu=new qe,Is=class i{constructor(t=new X,e=new X,n=new X){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Ti.subVectors(t,e),s.cross(Ti);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Ti.subVectors(s,e),is.subVectors(n,e),au.subVectors(t,e);let o=Ti.dot(Ti),a=Ti.dot(is),l=Ti.dot(au),c=is.dot(is),h=is.dot(au),u=o*c-a*a;if(u===0)return r.set(0,0,0),null;let d=1/u,f=(c*l-a*h)*d,g=(o*h-a*l)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,ss)===null?!1:ss.x>=0&&ss.y>=0&&ss.x+ss.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,ss)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,ss.x),l.addScaledVector(o,ss.y),l.addScaledVector(a,ss.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return uu.setScalar(0),du.setScalar(0),fu.setScalar(0),uu.fromBufferAttribute(t,e),du.fromBufferAttribute(t,n),fu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(uu,r.x),o.addScaledVector(du,r.y),o.addScaledVector(fu,r.z),o}static isFrontFacing(t,e,n,s){return Ti.subVectors(n,e),is.subVectors(t,e),Ti.cross(is).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Ti.subVectors(this.c,this.b),is.subVectors(this.a,this.b),Ti.cross(is).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;kr.subVectors(s,n),zr.subVectors(r,n),lu.subVectors(t,n);let l=kr.dot(lu),c=zr.dot(lu);if(l<=0&&c<=0)return e.copy(n);cu.subVectors(t,s);let h=kr.dot(cu),u=zr.dot(cu);if(h>=0&&u<=h)return e.copy(s);let d=l*u-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(kr,o);hu.subVectors(t,r);let f=kr.dot(hu),g=zr.dot(hu);if(g>=0&&f<=g)return e.copy(r);let x=f*c-l*g;if(x<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(zr,a);let p=h*g-f*u;if(p<=0&&u-h>=0&&f-g>=0)return jp.subVectors(r,s),a=(u-h)/(u-h+(f-g)),e.copy(s).addScaledVector(jp,a);let m=1/(p+x+d);return o=x*m,a=d*m,e.copy(n).addScaledVector(kr,o).addScaledVector(zr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Ls=class{constructor(t=new X(1/0,1/0,1/0),e=new X(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ai.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ai.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ai.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ai):Ai.fromBufferAttribute(r,o),Ai.applyMatrix4(t.matrixWorld),this.expandByPoint(Ai);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),sl.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),sl.copy(n.boundingBox)),sl.applyMatrix4(t.matrixWorld),this.union(sl)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ai),Ai.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Do),rl.subVectors(this.max,Do),Vr.subVectors(t.a,Do),Gr.subVectors(t.b,Do),Hr.subVectors(t.c,Do),Rs.subVectors(Gr,Vr),Cs.subVectors(Hr,Gr),Ks.subVectors(Vr,Hr);let e=[0,-Rs.z,Rs.y,0,-Cs.z,Cs.y,0,-Ks.z,Ks.y,Rs.z,0,-Rs.x,Cs.z,0,-Cs.x,Ks.z,0,-Ks.x,-Rs.y,Rs.x,0,-Cs.y,Cs.x,0,-Ks.y,Ks.x,0];return!pu(e,Vr,Gr,Hr,rl)||(e=[1,0,0,0,1,0,0,0,1],!pu(e,Vr,Gr,Hr,rl))?!1:(ol.crossVectors(Rs,Cs),e=[ol.x,ol.y,ol.z],pu(e,Vr,Gr,Hr,rl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ai).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ai).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(rs[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),rs[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),rs[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),rs[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),rs[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),rs[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),rs[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),rs[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(rs),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},rs=[new X,new X,new X,new X,new X,new X,new X,new X],Ai=new X,sl=new Ls,Vr=new X,Gr=new X,Hr=new X,Rs=new X,Cs=new X,Ks=new X,Do=new X,rl=new X,ol=new X,Qs=new X;function pu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){Qs.fromArray(i,r);let a=s.x*Math.abs(Qs.x)+s.y*Math.abs(Qs.y)+s.z*Math.abs(Qs.z),l=t.dot(Qs),c=e.dot(Qs),h=n.dot(Qs);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var dn=new X,al=new ne,ty=0,Un=class extends Ci{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:ty++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Xm,this.updateRanges=[],this.gpuType=Li,this.version=0,this._normalizationScale=t!==void 0?id(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)al.fromBufferAttribute(this,e),al.applyMatrix3(t),this.setXY(e,al.x,al.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix3(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix4(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyNormalMatrix(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.transformDirection(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Jm(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):jm(t,this.array)}};var qo=class extends Un{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var Yo=class extends Un{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Pn=class extends Un{constructor(t,e,n){super(new Float32Array(t),e,n)}},ey=new Ls,No=new X,mu=new X,nr=class{constructor(t=new X,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):ey.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;No.subVectors(t,this.center);let e=No.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(No,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(mu.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(No.copy(t.center).add(mu)),this.expandByPoint(No.copy(t.center).sub(mu))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},ny=0,gi=new We,gu=new Fn,Wr=new X,ai=new Ls,Uo=new Ls,Tn=new X,On=class i extends Ci{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:ny++}),this.uuid=co(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(Ax(t)?Yo:qo)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new ie().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return gi.makeRotationFromQuaternion(t),this.applyMatrix4(gi),this}rotateX(t){return gi.makeRotationX(t),this.applyMatrix4(gi),this}rotateY(t){return gi.makeRotationY(t),this.applyMatrix4(gi),this}rotateZ(t){return gi.makeRotationZ(t),this.applyMatrix4(gi),this}translate(t,e,n){return gi.makeTranslation(t,e,n),this.applyMatrix4(gi),this}scale(t,e,n){return gi.makeScale(t,e,n),this.applyMatrix4(gi),this}lookAt(t){return gu.lookAt(t),gu.updateMatrix(),this.applyMatrix4(gu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Wr).negate(),this.translate(Wr.x,Wr.y,Wr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Pn(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Yt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Ls);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ee("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new X(-1/0,-1/0,-1/0),new X(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];ai.setFromBufferAttribute(r),this.morphTargetsRelative?(Tn.addVectors(this.boundingBox.min,ai.min),this.boundingBox.expandByPoint(Tn),Tn.addVectors(this.boundingBox.max,ai.max),this.boundingBox.expandByPoint(Tn)):(this.boundingBox.expandByPoint(ai.min),this.boundingBox.expandByPoint(ai.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ee('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new nr);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ee("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new X,1/0);return}if(t){let n=this.boundingSphere.center;if(ai.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Uo.setFromBufferAttribute(a),this.morphTargetsRelative?(Tn.addVectors(ai.min,Uo.min),ai.expandByPoint(Tn),Tn.addVectors(ai.max,Uo.max),ai.expandByPoint(Tn)):(ai.expandByPoint(Uo.min),ai.expandByPoint(Uo.max))}ai.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Tn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Tn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Tn.fromBufferAttribute(a,c),l&&(Wr.fromBufferAttribute(t,c),Tn.add(Wr)),s=Math.max(s,n.distanceToSquared(Tn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ee('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ee("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Un(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let F=0;F<n.count;F++)a[F]=new X,l[F]=new X;let h=new X,u=new X,d=new X,f=new ne,g=new ne,x=new ne,p=new X,m=new X;function y(F,I,C){c[F]=c[I]=c[C]=1,h.fromBufferAttribute(n,F),u.fromBufferAttribute(n,I),d.fromBufferAttribute(n,C),f.fromBufferAttribute(r,F),g.fromBufferAttribute(r,I),x.fromBufferAttribute(r,C),u.sub(h),d.sub(h),g.sub(f),x.sub(f);let V=1/(g.x*x.y-x.x*g.y);isFinite(V)&&(p.copy(u).multiplyScalar(x.y).addScaledVector(d,-g.y).multiplyScalar(V),m.copy(d).multiplyScalar(g.x).addScaledVector(u,-x.x).multiplyScalar(V),a[F].add(p),a[I].add(p),a[C].add(p),l[F].add(m),l[I].add(m),l[C].add(m))}let A=this.groups;A.length===0&&(A=[{start:0,count:t.count}]);for(let F=0,I=A.length;F<I;++F){let C=A[F],V=C.start,U=C.count;for(let P=V,z=V+U;P<z;P+=3)y(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let M=new X,R=new X,w=new X,_=new X;function b(F){w.fromBufferAttribute(s,F),_.copy(w);let I=a[F];M.copy(I),M.sub(w.multiplyScalar(w.dot(I))).normalize(),R.crossVectors(_,I);let V=R.dot(l[F])<0?-1:1;o.setXYZW(F,M.x,M.y,M.z,V)}for(let F=0,I=n.count;F<I;++F)c[F]&&b(F);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Un(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new X,r=new X,o=new X,a=new X,l=new X,c=new X,h=new X,u=new X;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),x=t.getX(d+1),p=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,x),o.fromBufferAttribute(e,p),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,x),c.fromBufferAttribute(n,p),a.add(h),l.add(h),c.add(h),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(x,l.x,l.y,l.z),n.setXYZ(p,c.x,c.y,c.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),n.setXYZ(d+0,h.x,h.y,h.z),n.setXYZ(d+1,h.x,h.y,h.z),n.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Tn.fromBufferAttribute(t,e),Tn.normalize(),t.setXYZ(e,Tn.x,Tn.y,Tn.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,u=a.normalized,d=new c.constructor(l.length*h),f=0,g=0;for(let x=0,p=l.length;x<p;x++){a.isInterleavedBufferAttribute?f=l[x]*a.data.stride+a.offset:f=l[x]*h;for(let m=0;m<h;m++)d[g++]=c[f++]}return new Un(d,h,u)}if(this.index===null)return Yt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,u=c.length;h<u;h++){let d=c[h],f=t(d,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let u=0,d=c.length;u<d;u++){let f=c[u];h.push(f.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],u=r[c];for(let d=0,f=u.length;d<f;d++)h.push(u[d].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let u=o[c];this.addGroup(u.start,u.count,u.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var _u=new X,iy=new X,sy=new ie,Xn=class{constructor(t=new X(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=_u.subVectors(n,e).cross(iy.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(_u),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||sy.getNormalMatrix(t),s=this.coplanarPoint(_u).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},ry=0,hs=class extends Ci{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:ry++}),this.uuid=co(),this.name="",this.type="Material",this.blending=oo,this.side=Pi,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Du,this.blendDst=Nu,this.blendEquation=or,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new oe(0,0,0),this.blendAlpha=0,this.depthFunc=Zr,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=km,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=wl,this.stencilZFail=wl,this.stencilZPass=wl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Yt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Yt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new oe().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new Xn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ne().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ne().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var os=new X,xu=new X,ll=new X,cl=new X,ir=class{constructor(t=new X,e=new X(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,os)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=os.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(os.copy(this.origin).addScaledVector(this.direction,e),os.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){xu.copy(t).add(e).multiplyScalar(.5),ll.copy(e).sub(t).normalize(),cl.copy(this.origin).sub(xu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(ll),a=cl.dot(this.direction),l=-cl.dot(ll),c=cl.lengthSq(),h=Math.abs(1-o*o),u,d,f,g;if(h>0)if(u=o*l-a,d=o*a-l,g=r*h,u>=0)if(d>=-g)if(d<=g){let x=1/h;u*=x,d*=x,f=u*(u+o*d+2*a)+d*(o*u+d+2*l)+c}else d=r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d=-r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d<=-g?(u=Math.max(0,-(-o*r+a)),d=u>0?-r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c):d<=g?(u=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(u=Math.max(0,-(o*r+a)),d=u>0?r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c);else d=o>0?-r:r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,u),s&&s.copy(xu).addScaledVector(ll,d),f}intersectSphere(t,e){if(t.radius<0)return null;os.subVectors(t.center,this.origin);let n=os.dot(this.direction),s=os.dot(os)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,u=1/this.direction.z,d=this.origin;return c>=0?(n=(t.min.x-d.x)*c,s=(t.max.x-d.x)*c):(n=(t.max.x-d.x)*c,s=(t.min.x-d.x)*c),h>=0?(r=(t.min.y-d.y)*h,o=(t.max.y-d.y)*h):(r=(t.max.y-d.y)*h,o=(t.min.y-d.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),u>=0?(a=(t.min.z-d.z)*u,l=(t.max.z-d.z)*u):(a=(t.max.z-d.z)*u,l=(t.min.z-d.z)*u),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,os)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,u=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,x=e.y-o.y,p=e.z-o.z,m=n.x-o.x,y=n.y-o.y,A=n.z-o.z,M=Math.abs(l),R=Math.abs(c),w=Math.abs(h),_,b,F,I,C,V,U,P,z,$,O,st;if(M>=R&&M>=w?(F=l,V=u,z=g,st=m,l>=0?(_=c,b=h,I=d,C=f,U=x,P=p,$=y,O=A):(_=h,b=c,I=f,C=d,U=p,P=x,$=A,O=y)):R>=w?(F=c,V=d,z=x,st=y,c>=0?(_=h,b=l,I=f,C=u,U=p,P=g,$=A,O=m):(_=l,b=h,I=u,C=f,U=g,P=p,$=m,O=A)):(F=h,V=f,z=p,st=A,h>=0?(_=l,b=c,I=u,C=d,U=g,P=x,$=m,O=y):(_=c,b=l,I=d,C=u,U=x,P=g,$=y,O=m)),F===0)return null;let W=_/F,q=b/F,et=1/F,ht=I-W*V,ut=C-q*V,K=U-W*z,gt=P-q*z,lt=$-W*st,pt=O-q*st,xt=lt*gt-pt*K,Ht=ht*pt-ut*lt,jt=K*ut-gt*ht;if(s){if(xt<0||Ht<0||jt<0)return null}else if((xt<0||Ht<0||jt<0)&&(xt>0||Ht>0||jt>0))return null;let Vt=xt+Ht+jt;if(Vt===0)return null;let de=et*(xt*V+Ht*z+jt*st);return(Vt>0?de<0:de>0)?null:this.at(de/Vt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},us=class extends hs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new oe(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new cs,this.combine=ic,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Kp=new We,tr=new ir,hl=new nr,Qp=new X,ul=new X,dl=new X,fl=new X,yu=new X,pl=new X,tm=new X,ml=new X,Rn=class extends Fn{constructor(t=new On,e=new us){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){pl.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],u=r[l];h!==0&&(yu.fromBufferAttribute(u,t),o?pl.addScaledVector(yu,h):pl.addScaledVector(yu.sub(e),h))}e.add(pl)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),hl.copy(n.boundingSphere),hl.applyMatrix4(r),tr.copy(t.ray).recast(t.near),!(hl.containsPoint(tr.origin)===!1&&(tr.intersectSphere(hl,Qp)===null||tr.origin.distanceToSquared(Qp)>(t.far-t.near)**2))&&(Kp.copy(r).invert(),tr.copy(t.ray).applyMatrix4(Kp),!(n.boundingBox!==null&&tr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,tr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,u=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,x=d.length;g<x;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),A=Math.min(a.count,Math.min(p.start+p.count,f.start+f.count));for(let M=y,R=A;M<R;M+=3){let w=a.getX(M),_=a.getX(M+1),b=a.getX(M+2);s=gl(this,m,t,n,c,h,u,w,_,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),x=Math.min(a.count,f.start+f.count);for(let p=g,m=x;p<m;p+=3){let y=a.getX(p),A=a.getX(p+1),M=a.getX(p+2);s=gl(this,o,t,n,c,h,u,y,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,x=d.length;g<x;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),A=Math.min(l.count,Math.min(p.start+p.count,f.start+f.count));for(let M=y,R=A;M<R;M+=3){let w=M,_=M+1,b=M+2;s=gl(this,m,t,n,c,h,u,w,_,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),x=Math.min(l.count,f.start+f.count);for(let p=g,m=x;p<m;p+=3){let y=p,A=p+1,M=p+2;s=gl(this,o,t,n,c,h,u,y,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}}};function oy(i,t,e,n,s,r,o,a){let l;if(t.side===In?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Pi,a),l===null)return null;ml.copy(a),ml.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(ml);return c<e.near||c>e.far?null:{distance:c,point:ml.clone(),object:i}}function gl(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,ul),i.getVertexPosition(l,dl),i.getVertexPosition(c,fl);let h=oy(i,t,e,n,ul,dl,fl,tm);if(h){let u=new X;Is.getBarycoord(tm,ul,dl,fl,u),s&&(h.uv=Is.getInterpolatedAttribute(s,a,l,c,u,new ne)),r&&(h.uv1=Is.getInterpolatedAttribute(r,a,l,c,u,new ne)),o&&(h.normal=Is.getInterpolatedAttribute(o,a,l,c,u,new X),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new X,materialIndex:0};Is.getNormal(ul,dl,fl,d.normal),h.face=d,h.barycoord=u}return h}var Bl=class extends Zn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=An,h=An,u,d){super(null,o,a,l,c,h,s,r,u,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var er=new nr,ay=new ne(.5,.5),_l=new X,Ds=class{constructor(t=new Xn,e=new Xn,n=new Xn,s=new Xn,r=new Xn,o=new Xn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=_i,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],u=r[5],d=r[6],f=r[7],g=r[8],x=r[9],p=r[10],m=r[11],y=r[12],A=r[13],M=r[14],R=r[15];if(s[0].setComponents(c-o,f-h,m-g,R-y).normalize(),s[1].setComponents(c+o,f+h,m+g,R+y).normalize(),s[2].setComponents(c+a,f+u,m+x,R+A).normalize(),s[3].setComponents(c-a,f-u,m-x,R-A).normalize(),n)s[4].setComponents(l,d,p,M).normalize(),s[5].setComponents(c-l,f-d,m-p,R-M).normalize();else if(s[4].setComponents(c-l,f-d,m-p,R-M).normalize(),e===_i)s[5].setComponents(c+l,f+d,m+p,R+M).normalize();else if(e===Jr)s[5].setComponents(l,d,p,M).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),er.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),er.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(er)}intersectsSprite(t){er.center.set(0,0,0);let e=ay.distanceTo(t.center);return er.radius=.7071067811865476+e,er.applyMatrix4(t.matrixWorld),this.intersectsSphere(er)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(_l.x=s.normal.x>0?t.max.x:t.min.x,_l.y=s.normal.y>0?t.max.y:t.min.y,_l.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(_l)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},em=new We,kl=class i{constructor(){this.coordinateSystem=_i,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];em.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Ds),n[s].setFromProjectionMatrix(em,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Ds),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Ns=class extends hs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new oe(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},zl=new X,Vl=new X,nm=new We,Fo=new ir,xl=new nr,vu=new X,im=new X,Zo=class extends Fn{constructor(t=new On,e=new Ns){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)zl.fromBufferAttribute(e,s-1),Vl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=zl.distanceTo(Vl);t.setAttribute("lineDistance",new Pn(n,1))}else Yt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),xl.copy(n.boundingSphere),xl.applyMatrix4(s),xl.radius+=r,t.ray.intersectsSphere(xl)===!1)return;nm.copy(s).invert(),Fo.copy(t.ray).applyMatrix4(nm);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,d=n.attributes.position;if(h!==null){let f=Math.max(0,o.start),g=Math.min(h.count,o.start+o.count);for(let x=f,p=g-1;x<p;x+=c){let m=h.getX(x),y=h.getX(x+1),A=yl(this,t,Fo,l,m,y,x);A&&e.push(A)}if(this.isLineLoop){let x=h.getX(g-1),p=h.getX(f),m=yl(this,t,Fo,l,x,p,g-1);m&&e.push(m)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let x=f,p=g-1;x<p;x+=c){let m=yl(this,t,Fo,l,x,x+1,x);m&&e.push(m)}if(this.isLineLoop){let x=yl(this,t,Fo,l,g-1,f,g-1);x&&e.push(x)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function yl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(zl.fromBufferAttribute(a,s),Vl.fromBufferAttribute(a,r),e.distanceSqToSegment(zl,Vl,vu,im)>n)return;vu.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(vu);if(!(c<t.near||c>t.far))return{distance:c,point:im.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var sm=new X,rm=new X,eo=class extends Zo{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)sm.fromBufferAttribute(e,s),rm.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+sm.distanceTo(rm);t.setAttribute("lineDistance",new Pn(n,1))}else Yt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},Jo=class extends Zo{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var jo=class extends Zn{constructor(t=[],e=ar,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var ds=class extends Zn{constructor(t,e,n=Ii,s,r,o,a=An,l=An,c,h=ls,u=1){if(h!==ls&&h!==ps)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:u};super(d,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new Qr(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},Ko=class extends ds{constructor(t,e=Ii,n=ar,s,r,o=An,a=An,l,c=ls){let h={width:t,height:t,depth:1},u=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=u,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},Qo=class extends Zn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},no=class i extends On{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],u=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Pn(c,3)),this.setAttribute("normal",new Pn(h,3)),this.setAttribute("uv",new Pn(u,2));function g(x,p,m,y,A,M,R,w,_,b,F){let I=M/_,C=R/b,V=M/2,U=R/2,P=w/2,z=_+1,$=b+1,O=0,st=0,W=new X;for(let q=0;q<$;q++){let et=q*C-U;for(let ht=0;ht<z;ht++){let ut=ht*I-V;W[x]=ut*y,W[p]=et*A,W[m]=P,c.push(W.x,W.y,W.z),W[x]=0,W[p]=0,W[m]=w>0?1:-1,h.push(W.x,W.y,W.z),u.push(ht/_),u.push(1-q/b),O+=1}}for(let q=0;q<b;q++)for(let et=0;et<_;et++){let ht=d+et+z*q,ut=d+et+z*(q+1),K=d+(et+1)+z*(q+1),gt=d+(et+1)+z*q;l.push(ht,ut,gt),l.push(ut,K,gt),st+=6}a.addGroup(f,st,F),f+=st,d+=O}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var sr=class i extends On{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,u=t/a,d=e/l,f=[],g=[],x=[],p=[];for(let m=0;m<h;m++){let y=m*d-o;for(let A=0;A<c;A++){let M=A*u-r;g.push(M,-y,0),x.push(0,0,1),p.push(A/a),p.push(1-m/l)}}for(let m=0;m<l;m++)for(let y=0;y<a;y++){let A=y+c*m,M=y+c*(m+1),R=y+1+c*(m+1),w=y+1+c*m;f.push(A,M,w),f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(x,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var ta=class i extends On{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],u=new X,d=new X,f=[],g=[],x=[],p=[];for(let m=0;m<=n;m++){let y=[],A=m/n,M=o+A*a,R=t*Math.cos(M),w=Math.sqrt(t*t-R*R),_=0;m===0&&o===0?_=.5/e:m===n&&l===Math.PI&&(_=-.5/e);for(let b=0;b<=e;b++){let F=b/e,I=s+F*r;u.x=-w*Math.cos(I),u.y=R,u.z=w*Math.sin(I),g.push(u.x,u.y,u.z),d.copy(u).normalize(),x.push(d.x,d.y,d.z),p.push(F+_,1-A),y.push(c++)}h.push(y)}for(let m=0;m<n;m++)for(let y=0;y<e;y++){let A=h[m][y+1],M=h[m][y],R=h[m+1][y],w=h[m+1][y+1];(m!==0||o>0)&&f.push(A,M,w),(m!==n-1||l<Math.PI)&&f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(x,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function cr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(om(s))s.isRenderTargetTexture?(Yt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(om(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Bn(i){let t={};for(let e=0;e<i.length;e++){let n=cr(i[e]);for(let s in n)t[s]=n[s]}return t}function om(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function ly(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function rd(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ve.workingColorSpace}var Qm={clone:cr,merge:Bn},cy=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,hy=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Xi=class extends hs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=cy,this.fragmentShader=hy,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=cr(t.uniforms),this.uniformsGroups=ly(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new oe().setHex(s.value);break;case"v2":this.uniforms[n].value=new ne().fromArray(s.value);break;case"v3":this.uniforms[n].value=new X().fromArray(s.value);break;case"v4":this.uniforms[n].value=new qe().fromArray(s.value);break;case"m3":this.uniforms[n].value=new ie().fromArray(s.value);break;case"m4":this.uniforms[n].value=new We().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Gl=class extends Xi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var ea=class extends hs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new oe(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new oe(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Hc,this.normalScale=new ne(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new cs,this.combine=ic,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Hl=class extends hs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Om,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Wl=class extends hs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Xr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function vl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Us=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Xl=class extends Us{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:Su,endingEnd:Su}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case wu:r=t,a=2*e-n;break;case Eu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case wu:o=t,l=2*n-e;break;case Eu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,u=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),x=g*g,p=x*g,m=-d*p+2*d*x-d*g,y=(1+d)*p+(-1.5-2*d)*x+(-.5+d)*g+1,A=(-1-f)*p+(1.5+f)*x+.5*g,M=f*p-f*x;for(let R=0;R!==a;++R)r[R]=m*o[h+R]+y*o[c+R]+A*o[l+R]+M*o[u+R];return r}},$l=class extends Us{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),u=1-h;for(let d=0;d!==a;++d)r[d]=o[c+d]*u+o[l+d]*h;return r}},ql=class extends Us{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},Yl=class extends Us{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,u=this.outTangents;if(!h||!u){let g=(n-e)/(s-e),x=1-g;for(let p=0;p!==a;++p)r[p]=o[c+p]*x+o[l+p]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let x=o[c+g],p=o[l+g],m=f*d+g*2,y=u[m],A=u[m+1],M=t*d+g*2,R=h[M],w=h[M+1],_=dy(n,e,y,R,s);r[g]=tg(_,x,A,w,p)}return r}};function tg(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function uy(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function dy(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=tg(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=uy(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var ui=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Xr(e,this.TimeBufferType),this.values=Xr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Xr(t.times,Array),values:Xr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),vl(t.settings)&&(n.settings={inTangents:Xr(t.settings.inTangents,Array),outTangents:Xr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new ql(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new $l(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Xl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new Yl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case zo:e=this.InterpolantFactoryMethodDiscrete;break;case Nl:e=this.InterpolantFactoryMethodLinear;break;case Sl:e=this.InterpolantFactoryMethodSmooth;break;case bu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Yt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return zo;case this.InterpolantFactoryMethodLinear:return Nl;case this.InterpolantFactoryMethodSmooth:return Sl;case this.InterpolantFactoryMethodBezier:return bu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;vl(this.settings)&&(am(this.settings.inTangents,t),am(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;vl(this.settings)&&(lm(this.settings.inTangents,t),lm(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ee("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ee("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){ee("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){ee("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&Rx(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){ee("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Sl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let u=a*n,d=u-n,f=u+n;for(let g=0;g!==n;++g){let x=e[u+g];if(x!==e[d+g]||x!==e[f+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let u=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[u+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,vl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function am(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function lm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}ui.prototype.ValueTypeName="";ui.prototype.TimeBufferType=Float32Array;ui.prototype.ValueBufferType=Float32Array;ui.prototype.DefaultInterpolation=Nl;var Fs=class extends ui{constructor(t,e,n){super(t,e,n)}};Fs.prototype.ValueTypeName="bool";Fs.prototype.ValueBufferType=Array;Fs.prototype.DefaultInterpolation=zo;Fs.prototype.InterpolantFactoryMethodLinear=void 0;Fs.prototype.InterpolantFactoryMethodSmooth=void 0;var Zl=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};Zl.prototype.ValueTypeName="color";var Jl=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};Jl.prototype.ValueTypeName="number";var jl=class extends Us{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)ci.slerpFlat(r,0,o,c-a,o,c,l);return r}},na=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new jl(this.times,this.values,this.getValueSize(),t)}};na.prototype.ValueTypeName="quaternion";na.prototype.InterpolantFactoryMethodSmooth=void 0;var Os=class extends ui{constructor(t,e,n){super(t,e,n)}};Os.prototype.ValueTypeName="string";Os.prototype.ValueBufferType=Array;Os.prototype.DefaultInterpolation=zo;Os.prototype.InterpolantFactoryMethodLinear=void 0;Os.prototype.InterpolantFactoryMethodSmooth=void 0;var Kl=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};Kl.prototype.ValueTypeName="vector";var Ql=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,u){return c.push(h,u),this},this.removeHandler=function(h){let u=c.indexOf(h);return u!==-1&&c.splice(u,2),this},this.getHandler=function(h){for(let u=0,d=c.length;u<d;u+=2){let f=c[u],g=c[u+1];if(f.global&&(f.lastIndex=0),f.test(h))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},eg=new Ql,tc=class{constructor(t){this.manager=t!==void 0?t:eg,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};tc.DEFAULT_MATERIAL_NAME="__DEFAULT";var ia=class extends Fn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new oe(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var Mu=new We,cm=new X,hm=new X,ec=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ne(512,512),this.mapType=Jn,this.map=null,this.mapPass=null,this.matrix=new We,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Ds,this._frameExtents=new ne(1,1),this._viewportCount=1,this._viewports=[new qe(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;cm.setFromMatrixPosition(t.matrixWorld),e.position.copy(cm),hm.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(hm),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){Mu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(Mu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===Jr||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(Mu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},Ml=new X,bl=new ci,Hi=new X,sa=class extends Fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new We,this.projectionMatrix=new We,this.projectionMatrixInverse=new We,this.coordinateSystem=_i,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(Ml,bl,Hi),Hi.x===1&&Hi.y===1&&Hi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ml,bl,Hi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(Ml,bl,Hi),Hi.x===1&&Hi.y===1&&Hi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ml,bl,Hi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Ps=new X,um=new ne,dm=new ne,$n=class extends sa{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=Kr*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Bo*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return Kr*2*Math.atan(Math.tan(Bo*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Ps.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Ps.x,Ps.y).multiplyScalar(-t/Ps.z),Ps.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Ps.x,Ps.y).multiplyScalar(-t/Ps.z)}getViewSize(t,e){return this.getViewBounds(t,um,dm),e.subVectors(dm,um)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Bo*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var ra=class extends sa{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},Tu=class extends ec{constructor(){super(new ra(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},oa=class extends ia{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.target=new Fn,this.shadow=new Tu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},aa=class extends ia{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var $r=-90,qr=1,io=class extends Fn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new $n($r,qr,t,e);s.layers=this.layers,this.add(s);let r=new $n($r,qr,t,e);r.layers=this.layers,this.add(r);let o=new $n($r,qr,t,e);o.layers=this.layers,this.add(o);let a=new $n($r,qr,t,e);a.layers=this.layers,this.add(a);let l=new $n($r,qr,t,e);l.layers=this.layers,this.add(l);let c=new $n($r,qr,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===_i)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===Jr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,u=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let x=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let p=!1;t.isWebGLRenderer===!0?p=t.state.buffers.depth.getReversed():p=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=x,t.setRenderTarget(n,5,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(u,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},nc=class extends $n{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var od="\\[\\]\\.:\\/",fy=new RegExp("["+od+"]","g"),ad="[^"+od+"]",py="[^"+od.replace("\\.","")+"]",my=/((?:WC+[\/:])*)/.source.replace("WC",ad),gy=/(WCOD+)?/.source.replace("WCOD",py),_y=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",ad),xy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",ad),yy=new RegExp("^"+my+gy+_y+xy+"$"),vy=["material","materials","bones","map"],Au=class{constructor(t,e,n){let s=n||He.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},He=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(fy,"")}static parseTrackName(t){let e=yy.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);vy.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Yt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){ee("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ee("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ee("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ee("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ee("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ee("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){ee("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;ee("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ee("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ee("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};He.Composite=Au;He.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};He.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};He.prototype.GetterByBindingType=[He.prototype._getValue_direct,He.prototype._getValue_array,He.prototype._getValue_arrayElement,He.prototype._getValue_toArray];He.prototype.SetterByBindingTypeAndVersioning=[[He.prototype._setValue_direct,He.prototype._setValue_direct_setNeedsUpdate,He.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[He.prototype._setValue_array,He.prototype._setValue_array_setNeedsUpdate,He.prototype._setValue_array_setMatrixWorldNeedsUpdate],[He.prototype._setValue_arrayElement,He.prototype._setValue_arrayElement_setNeedsUpdate,He.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[He.prototype._setValue_fromArray,He.prototype._setValue_fromArray_setNeedsUpdate,He.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var x1=new Float32Array(1);var so=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=me(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(me(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Ru=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var la=class extends Ci{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function ld(i,t,e,n){let s=My(n);switch(e){case qu:return i*t;case Zu:return i*t/s.components*s.byteLength;case hc:return i*t/s.components*s.byteLength;case zs:return i*t*2/s.components*s.byteLength;case uc:return i*t*2/s.components*s.byteLength;case Yu:return i*t*3/s.components*s.byteLength;case Ni:return i*t*4/s.components*s.byteLength;case dc:return i*t*4/s.components*s.byteLength;case ua:case da:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case fa:case pa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case pc:case gc:return Math.max(i,16)*Math.max(t,8)/4;case fc:case mc:return Math.max(i,8)*Math.max(t,8)/2;case _c:case xc:case vc:case Mc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case yc:case ma:case bc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Sc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case wc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Ec:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Tc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Ac:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Rc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Cc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Pc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Ic:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Lc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Dc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Nc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Uc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Fc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Oc:case Bc:case kc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case zc:case Vc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case ga:case Gc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function My(i){switch(i){case Jn:case Hu:return{byteLength:1,components:1};case lo:case Wu:case Di:return{byteLength:2,components:1};case lc:case cc:return{byteLength:2,components:4};case Ii:case ac:case Li:return{byteLength:4,components:1};case Xu:case $u:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Yt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function Sg(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function Sy(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,u=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,h),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:u}}function n(a,l,c){let h=l.array,u=l.updateRanges;if(i.bindBuffer(c,a),u.length===0)i.bufferSubData(c,0,h);else{u.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<u.length;f++){let g=u[d],x=u[f];x.start<=g.start+g.count+1?g.count=Math.max(g.count,x.start+x.count-g.start):(++d,u[d]=x)}u.length=d+1;for(let f=0,g=u.length;f<g;f++){let x=u[f];i.bufferSubData(c,x.start*h.BYTES_PER_ELEMENT,h,x.start,x.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var wy=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Ey=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,Ty=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Ay=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Ry=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,Cy=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Py=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,Iy=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,Ly=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,Dy=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Ny=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Uy=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Fy=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,Oy=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,By=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,ky=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,zy=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Vy=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Gy=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Hy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Wy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Xy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,$y=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,qy=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,Yy=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,Zy=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Jy=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,jy=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Ky=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Qy="gl_FragColor = linearToOutputTexel( gl_FragColor );",tv=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,ev=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,nv=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,iv=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,sv=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,rv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,ov=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,av=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,lv=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,cv=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,hv=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,uv=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,dv=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,fv=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,pv=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,mv=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,gv=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,_v=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,xv=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,yv=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,vv=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Mv=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,bv=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Sv=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,wv=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Ev=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,Tv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Av=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Rv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Cv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Pv=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Iv=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Lv=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,Dv=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Nv=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Uv=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Fv=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Ov=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,Bv=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,kv=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,zv=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Vv=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,Gv=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,Hv=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Wv=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Xv=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,$v=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,qv=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Yv=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Zv=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Jv=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,jv=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Kv=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,Qv=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,tM=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,eM=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,nM=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,iM=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,sM=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,rM=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,oM=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,aM=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,lM=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,cM=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,hM=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,uM=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,dM=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,fM=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,pM=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,mM=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,gM=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,_M=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,xM=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,yM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,vM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,MM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,bM=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,SM=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,wM=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,EM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,TM=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,AM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,RM=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,CM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,PM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,IM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,LM=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,DM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,NM=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,UM=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,FM=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,OM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,BM=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,kM=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,zM=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,VM=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,GM=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,HM=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,WM=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,XM=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,$M=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,qM=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,YM=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,ZM=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,JM=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,jM=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,KM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,QM=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,tb=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,eb=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,nb=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,ue={alphahash_fragment:wy,alphahash_pars_fragment:Ey,alphamap_fragment:Ty,alphamap_pars_fragment:Ay,alphatest_fragment:Ry,alphatest_pars_fragment:Cy,aomap_fragment:Py,aomap_pars_fragment:Iy,batching_pars_vertex:Ly,batching_vertex:Dy,begin_vertex:Ny,beginnormal_vertex:Uy,bsdfs:Fy,iridescence_fragment:Oy,bumpmap_pars_fragment:By,clipping_planes_fragment:ky,clipping_planes_pars_fragment:zy,clipping_planes_pars_vertex:Vy,clipping_planes_vertex:Gy,color_fragment:Hy,color_pars_fragment:Wy,color_pars_vertex:Xy,color_vertex:$y,common:qy,defaultnormal_vertex:Yy,displacementmap_pars_vertex:Zy,displacementmap_vertex:Jy,emissivemap_fragment:jy,emissivemap_pars_fragment:Ky,colorspace_fragment:Qy,colorspace_pars_fragment:tv,envmap_fragment:ev,envmap_common_pars_fragment:nv,envmap_pars_fragment:iv,envmap_pars_vertex:sv,envmap_physical_pars_fragment:mv,envmap_vertex:rv,fog_vertex:ov,fog_pars_vertex:av,fog_fragment:lv,fog_pars_fragment:cv,gradientmap_pars_fragment:hv,lightmap_pars_fragment:uv,lights_lambert_fragment:dv,lights_lambert_pars_fragment:fv,lights_pars_begin:pv,lights_toon_fragment:gv,lights_toon_pars_fragment:_v,lights_phong_fragment:xv,lights_phong_pars_fragment:yv,lights_physical_fragment:vv,lights_physical_pars_fragment:Mv,lights_fragment_begin:bv,lights_fragment_maps:Sv,lights_fragment_end:wv,lightprobes_pars_fragment:Ev,logdepthbuf_fragment:Tv,logdepthbuf_pars_fragment:Av,logdepthbuf_pars_vertex:Rv,logdepthbuf_vertex:Cv,map_fragment:Pv,map_pars_fragment:Iv,map_particle_fragment:Lv,map_particle_pars_fragment:Dv,metalnessmap_fragment:Nv,metalnessmap_pars_fragment:Uv,morphinstance_vertex:Fv,morphcolor_vertex:Ov,morphnormal_vertex:Bv,morphtarget_pars_vertex:kv,morphtarget_vertex:zv,normal_fragment_begin:Vv,normal_fragment_maps:Gv,normal_pars_fragment:Hv,normal_pars_vertex:Wv,normal_vertex:Xv,normalmap_pars_fragment:$v,clearcoat_normal_fragment_begin:qv,clearcoat_normal_fragment_maps:Yv,clearcoat_pars_fragment:Zv,iridescence_pars_fragment:Jv,opaque_fragment:jv,packing:Kv,premultiplied_alpha_fragment:Qv,project_vertex:tM,dithering_fragment:eM,dithering_pars_fragment:nM,roughnessmap_fragment:iM,roughnessmap_pars_fragment:sM,shadowmap_pars_fragment:rM,shadowmap_pars_vertex:oM,shadowmap_vertex:aM,shadowmask_pars_fragment:lM,skinbase_vertex:cM,skinning_pars_vertex:hM,skinning_vertex:uM,skinnormal_vertex:dM,specularmap_fragment:fM,specularmap_pars_fragment:pM,tonemapping_fragment:mM,tonemapping_pars_fragment:gM,transmission_fragment:_M,transmission_pars_fragment:xM,uv_pars_fragment:yM,uv_pars_vertex:vM,uv_vertex:MM,worldpos_vertex:bM,background_vert:SM,background_frag:wM,backgroundCube_vert:EM,backgroundCube_frag:TM,cube_vert:AM,cube_frag:RM,depth_vert:CM,depth_frag:PM,distance_vert:IM,distance_frag:LM,equirect_vert:DM,equirect_frag:NM,linedashed_vert:UM,linedashed_frag:FM,meshbasic_vert:OM,meshbasic_frag:BM,meshlambert_vert:kM,meshlambert_frag:zM,meshmatcap_vert:VM,meshmatcap_frag:GM,meshnormal_vert:HM,meshnormal_frag:WM,meshphong_vert:XM,meshphong_frag:$M,meshphysical_vert:qM,meshphysical_frag:YM,meshtoon_vert:ZM,meshtoon_frag:JM,points_vert:jM,points_frag:KM,shadow_vert:QM,shadow_frag:tb,sprite_vert:eb,sprite_frag:nb},Dt={common:{diffuse:{value:new oe(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new ie},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new ie}},envmap:{envMap:{value:null},envMapRotation:{value:new ie},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new ie}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new ie}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new ie},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new ie},normalScale:{value:new ne(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new ie},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new ie}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new ie}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new ie}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new oe(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new oe(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0},uvTransform:{value:new ie}},sprite:{diffuse:{value:new oe(16777215)},opacity:{value:1},center:{value:new ne(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new ie},alphaMap:{value:null},alphaMapTransform:{value:new ie},alphaTest:{value:0}}},Yi={basic:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.fog]),vertexShader:ue.meshbasic_vert,fragmentShader:ue.meshbasic_frag},lambert:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,Dt.lights,{emissive:{value:new oe(0)},envMapIntensity:{value:1}}]),vertexShader:ue.meshlambert_vert,fragmentShader:ue.meshlambert_frag},phong:{uniforms:Bn([Dt.common,Dt.specularmap,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,Dt.lights,{emissive:{value:new oe(0)},specular:{value:new oe(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:ue.meshphong_vert,fragmentShader:ue.meshphong_frag},standard:{uniforms:Bn([Dt.common,Dt.envmap,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.roughnessmap,Dt.metalnessmap,Dt.fog,Dt.lights,{emissive:{value:new oe(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:ue.meshphysical_vert,fragmentShader:ue.meshphysical_frag},toon:{uniforms:Bn([Dt.common,Dt.aomap,Dt.lightmap,Dt.emissivemap,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.gradientmap,Dt.fog,Dt.lights,{emissive:{value:new oe(0)}}]),vertexShader:ue.meshtoon_vert,fragmentShader:ue.meshtoon_frag},matcap:{uniforms:Bn([Dt.common,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,Dt.fog,{matcap:{value:null}}]),vertexShader:ue.meshmatcap_vert,fragmentShader:ue.meshmatcap_frag},points:{uniforms:Bn([Dt.points,Dt.fog]),vertexShader:ue.points_vert,fragmentShader:ue.points_frag},dashed:{uniforms:Bn([Dt.common,Dt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:ue.linedashed_vert,fragmentShader:ue.linedashed_frag},depth:{uniforms:Bn([Dt.common,Dt.displacementmap]),vertexShader:ue.depth_vert,fragmentShader:ue.depth_frag},normal:{uniforms:Bn([Dt.common,Dt.bumpmap,Dt.normalmap,Dt.displacementmap,{opacity:{value:1}}]),vertexShader:ue.meshnormal_vert,fragmentShader:ue.meshnormal_frag},sprite:{uniforms:Bn([Dt.sprite,Dt.fog]),vertexShader:ue.sprite_vert,fragmentShader:ue.sprite_frag},background:{uniforms:{uvTransform:{value:new ie},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:ue.background_vert,fragmentShader:ue.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new ie}},vertexShader:ue.backgroundCube_vert,fragmentShader:ue.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:ue.cube_vert,fragmentShader:ue.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:ue.equirect_vert,fragmentShader:ue.equirect_frag},distance:{uniforms:Bn([Dt.common,Dt.displacementmap,{referencePosition:{value:new X},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:ue.distance_vert,fragmentShader:ue.distance_frag},shadow:{uniforms:Bn([Dt.lights,Dt.fog,{color:{value:new oe(0)},opacity:{value:1}}]),vertexShader:ue.shadow_vert,fragmentShader:ue.shadow_frag}};Yi.physical={uniforms:Bn([Yi.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new ie},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new ie},clearcoatNormalScale:{value:new ne(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new ie},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new ie},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new ie},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new ie},sheen:{value:0},sheenColor:{value:new oe(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new ie},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new ie},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new ie},transmissionSamplerSize:{value:new ne},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new ie},attenuationDistance:{value:0},attenuationColor:{value:new oe(0)},specularColor:{value:new oe(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new ie},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new ie},anisotropyVector:{value:new ne},anisotropyMap:{value:null},anisotropyMapTransform:{value:new ie}}]),vertexShader:ue.meshphysical_vert,fragmentShader:ue.meshphysical_frag};var Wc={r:0,b:0,g:0},ib=new We,wg=new ie;wg.set(-1,0,0,0,1,0,0,0,1);function sb(i,t,e,n,s,r){let o=new oe(0),a=s===!0?0:1,l,c,h=null,u=0,d=null;function f(y){let A=y.isScene===!0?y.background:null;if(A&&A.isTexture){let M=y.backgroundBlurriness>0;A=t.get(A,M)}return A}function g(y){let A=!1,M=f(y);M===null?p(o,a):M&&M.isColor&&(p(M,1),A=!0);let R=i.xr.getEnvironmentBlendMode();R==="additive"?e.buffers.color.setClear(0,0,0,1,r):R==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||A)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function x(y,A){let M=f(A);M&&M.isCubeTexture?(c===void 0&&(c=new Rn(new no(1,1,1),new Xi({name:"BackgroundCubeMaterial",uniforms:cr(Yi.backgroundCube.uniforms),vertexShader:Yi.backgroundCube.vertexShader,fragmentShader:Yi.backgroundCube.fragmentShader,side:In,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(R,w,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=M,c.material.uniforms.backgroundBlurriness.value=A.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(ib.makeRotationFromEuler(A.backgroundRotation)).transpose(),M.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(wg),c.material.toneMapped=ve.getTransfer(M.colorSpace)!==Re,(h!==M||u!==M.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):M&&M.isTexture&&(l===void 0&&(l=new Rn(new sr(2,2),new Xi({name:"BackgroundMaterial",uniforms:cr(Yi.background.uniforms),vertexShader:Yi.background.vertexShader,fragmentShader:Yi.background.fragmentShader,side:Pi,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=M,l.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,l.material.toneMapped=ve.getTransfer(M.colorSpace)!==Re,M.matrixAutoUpdate===!0&&M.updateMatrix(),l.material.uniforms.uvTransform.value.copy(M.matrix),(h!==M||u!==M.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function p(y,A){y.getRGB(Wc,rd(i)),e.buffers.color.setClear(Wc.r,Wc.g,Wc.b,A,r)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,A=1){o.set(y),a=A,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,p(o,a)},render:g,addToRenderList:x,dispose:m}}function rb(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(C,V,U,P,z){let $=!1,O=u(C,P,U,V);r!==O&&(r=O,c(r.object)),$=f(C,P,U,z),$&&g(C,P,U,z),z!==null&&t.update(z,i.ELEMENT_ARRAY_BUFFER),($||o)&&(o=!1,M(C,V,U,P),z!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(z).buffer))}function l(){return i.createVertexArray()}function c(C){return i.bindVertexArray(C)}function h(C){return i.deleteVertexArray(C)}function u(C,V,U,P){let z=P.wireframe===!0,$=n[V.id];$===void 0&&($={},n[V.id]=$);let O=C.isInstancedMesh===!0?C.id:0,st=$[O];st===void 0&&(st={},$[O]=st);let W=st[U.id];W===void 0&&(W={},st[U.id]=W);let q=W[z];return q===void 0&&(q=d(l()),W[z]=q),q}function d(C){let V=[],U=[],P=[];for(let z=0;z<e;z++)V[z]=0,U[z]=0,P[z]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:V,enabledAttributes:U,attributeDivisors:P,object:C,attributes:{},index:null}}function f(C,V,U,P){let z=r.attributes,$=V.attributes,O=0,st=U.getAttributes();for(let W in st)if(st[W].location>=0){let et=z[W],ht=$[W];if(ht===void 0&&(W==="instanceMatrix"&&C.instanceMatrix&&(ht=C.instanceMatrix),W==="instanceColor"&&C.instanceColor&&(ht=C.instanceColor)),et===void 0||et.attribute!==ht||ht&&et.data!==ht.data)return!0;O++}return r.attributesNum!==O||r.index!==P}function g(C,V,U,P){let z={},$=V.attributes,O=0,st=U.getAttributes();for(let W in st)if(st[W].location>=0){let et=$[W];et===void 0&&(W==="instanceMatrix"&&C.instanceMatrix&&(et=C.instanceMatrix),W==="instanceColor"&&C.instanceColor&&(et=C.instanceColor));let ht={};ht.attribute=et,et&&et.data&&(ht.data=et.data),z[W]=ht,O++}r.attributes=z,r.attributesNum=O,r.index=P}function x(){let C=r.newAttributes;for(let V=0,U=C.length;V<U;V++)C[V]=0}function p(C){m(C,0)}function m(C,V){let U=r.newAttributes,P=r.enabledAttributes,z=r.attributeDivisors;U[C]=1,P[C]===0&&(i.enableVertexAttribArray(C),P[C]=1),z[C]!==V&&(i.vertexAttribDivisor(C,V),z[C]=V)}function y(){let C=r.newAttributes,V=r.enabledAttributes;for(let U=0,P=V.length;U<P;U++)V[U]!==C[U]&&(i.disableVertexAttribArray(U),V[U]=0)}function A(C,V,U,P,z,$,O){O===!0?i.vertexAttribIPointer(C,V,U,z,$):i.vertexAttribPointer(C,V,U,P,z,$)}function M(C,V,U,P){x();let z=P.attributes,$=U.getAttributes(),O=V.defaultAttributeValues;for(let st in $){let W=$[st];if(W.location>=0){let q=z[st];if(q===void 0&&(st==="instanceMatrix"&&C.instanceMatrix&&(q=C.instanceMatrix),st==="instanceColor"&&C.instanceColor&&(q=C.instanceColor)),q!==void 0){let et=q.normalized,ht=q.itemSize,ut=t.get(q);if(ut===void 0)continue;let K=ut.buffer,gt=ut.type,lt=ut.bytesPerElement,pt=gt===i.INT||gt===i.UNSIGNED_INT||q.gpuType===ac;if(q.isInterleavedBufferAttribute){let xt=q.data,Ht=xt.isInterleavedBuffer===!0?xt.stride:xt.itemSize,jt=q.offset;if(xt.isInstancedInterleavedBuffer||xt.isInstancedBufferAttribute){for(let Vt=0;Vt<W.locationSize;Vt++)m(W.location+Vt,xt.meshPerAttribute);C.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=xt.meshPerAttribute*xt.count)}else for(let Vt=0;Vt<W.locationSize;Vt++)p(W.location+Vt);i.bindBuffer(i.ARRAY_BUFFER,K);for(let Vt=0;Vt<W.locationSize;Vt++)A(W.location+Vt,ht/W.locationSize,gt,et,Ht*lt,(jt+ht/W.locationSize*Vt)*lt,pt)}else{if(q.isInstancedBufferAttribute){for(let xt=0;xt<W.locationSize;xt++)m(W.location+xt,q.meshPerAttribute);C.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=q.meshPerAttribute*q.count)}else for(let xt=0;xt<W.locationSize;xt++)p(W.location+xt);i.bindBuffer(i.ARRAY_BUFFER,K);for(let xt=0;xt<W.locationSize;xt++)A(W.location+xt,ht/W.locationSize,gt,et,ht*lt,ht/W.locationSize*xt*lt,pt)}}else if(O!==void 0){let et=O[st];if(et!==void 0)switch(et.length){case 2:i.vertexAttrib2fv(W.location,et);break;case 3:i.vertexAttrib3fv(W.location,et);break;case 4:i.vertexAttrib4fv(W.location,et);break;default:i.vertexAttrib1fv(W.location,et)}}}}y()}function R(){F();for(let C in n){let V=n[C];for(let U in V){let P=V[U];for(let z in P){let $=P[z];for(let O in $)h($[O].object),delete $[O];delete P[z]}}delete n[C]}}function w(C){if(n[C.id]===void 0)return;let V=n[C.id];for(let U in V){let P=V[U];for(let z in P){let $=P[z];for(let O in $)h($[O].object),delete $[O];delete P[z]}}delete n[C.id]}function _(C){for(let V in n){let U=n[V];for(let P in U){let z=U[P];if(z[C.id]===void 0)continue;let $=z[C.id];for(let O in $)h($[O].object),delete $[O];delete z[C.id]}}}function b(C){for(let V in n){let U=n[V],P=C.isInstancedMesh===!0?C.id:0,z=U[P];if(z!==void 0){for(let $ in z){let O=z[$];for(let st in O)h(O[st].object),delete O[st];delete z[$]}delete U[P],Object.keys(U).length===0&&delete n[V]}}}function F(){I(),o=!0,r!==s&&(r=s,c(r.object))}function I(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:F,resetDefaultState:I,dispose:R,releaseStatesOfGeometry:w,releaseStatesOfObject:b,releaseStatesOfProgram:_,initAttributes:x,enableAttribute:p,disableUnusedAttributes:y}}function ob(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let d=0;for(let f=0;f<h;f++)d+=c[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function ab(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let _=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(_){return!(_!==Ni&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let b=_===Di&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(_!==Jn&&_!==Li&&!b&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(_){if(_==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(Yt("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let u=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&u===!1;e.reversedDepthBuffer===!0&&u===!1&&Yt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&u===!0&&Yt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),x=i.getParameter(i.MAX_TEXTURE_SIZE),p=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),A=i.getParameter(i.MAX_VARYING_VECTORS),M=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),R=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:u,maxTextures:f,maxVertexTextures:g,maxTextureSize:x,maxCubemapSize:p,maxAttributes:m,maxVertexUniforms:y,maxVaryings:A,maxFragmentUniforms:M,maxSamples:R,samples:w}}function lb(i){let t=this,e=null,n=0,s=!1,r=!1,o=new Xn,a=new ie,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(u,d){let f=u.length!==0||d||n!==0||s;return s=d,n=u.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(u,d){e=h(u,d,0)},this.setState=function(u,d,f){let g=u.clippingPlanes,x=u.clipIntersection,p=u.clipShadows,m=i.get(u);if(!s||g===null||g.length===0||r&&!p)r?h(null):c();else{let y=r?0:n,A=y*4,M=m.clippingState||null;l.value=M,M=h(g,d,A,f);for(let R=0;R!==A;++R)M[R]=e[R];m.clippingState=M,this.numIntersection=x?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(u,d,f,g){let x=u!==null?u.length:0,p=null;if(x!==0){if(p=l.value,g!==!0||p===null){let m=f+x*4,y=d.matrixWorldInverse;a.getNormalMatrix(y),(p===null||p.length<m)&&(p=new Float32Array(m));for(let A=0,M=f;A!==x;++A,M+=4)o.copy(u[A]).applyMatrix4(y,a),o.normal.toArray(p,M),p[M+3]=o.constant}l.value=p,l.needsUpdate=!0}return t.numPlanes=x,t.numIntersection=0,p}}var ya=class extends hi{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new jo(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new no(5,5,5),r=new Xi({name:"CubemapFromEquirect",uniforms:cr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:In,blending:rr});r.uniforms.tEquirect.value=e;let o=new Rn(s,r),a=e.minFilter;return e.minFilter===fs&&(e.minFilter=qn),new io(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},ng=256,cb=3,hb=20,Eg=256,Tg=16,ub=3,db=new X,fb=new oe,$c=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new io(1,10,null),this._boxMesh=new Rn(new no(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=db}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let u=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,x=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,x===null&&(t.background=l.getClearColor(fb));let p=new io(n,s,h);return p.position.copy(a),p.update(l,t),l.autoClear=u,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=g,t.background=x,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=rg(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=sg(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(ng,nd(t))}_fromTexture(t,e){t.mapping===ar||t.mapping===ao?this._setSize(t.image.length===0?ng:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=ig(t,!1,!1),n=Math.log2(t)-cb;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=ig(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===ar||t.mapping===ao?(this._cubemapMaterial===null&&(this._cubemapMaterial=rg()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=sg()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=pb(),this._integrationMaterial=mb());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Tg);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-ub)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(Eg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=gb());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function ig(i,t,e){return new ya(i,{minFilter:fs,generateMipmaps:t,type:Di,colorSpace:Vo,depthBuffer:e})}function va(i,t,e){return new Xi({name:i,uniforms:t,vertexShader:ue.cube_vert,fragmentShader:e,side:In,blending:rr,depthTest:!1,depthWrite:!1})}function pb(){return va("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Eg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function mb(){return va("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Tg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function gb(){return va("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${hb}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function sg(){return va("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function rg(){return va("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function _b(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===sc||f===rc)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let x=new ya(g.height);return x.fromEquirectangularTexture(i,d),t.set(d,x),d.addEventListener("dispose",c),a(x.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===sc||f===rc,x=f===ar||f===ao;if(g||x){let p=e.get(d),m=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==m)return n===null&&(n=new $c(i)),p=g?n.fromEquirectangular(d,p):n.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),p.texture;if(p!==void 0)return p.texture;{let y=d.image;return g&&y&&y.height>0||x&&y&&l(y)?(n===null&&(n=new $c(i)),p=g?n.fromEquirectangular(d):n.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),d.addEventListener("dispose",h),p.texture):null}}}return d}function a(d,f){return f===sc?d.mapping=ar:f===rc&&(d.mapping=ao),d}function l(d){let f=0,g=6;for(let x=0;x<g;x++)d[x]!==void 0&&f++;return f===g}function c(d){let f=d.target;f.removeEventListener("dispose",c);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function h(d){let f=d.target;f.removeEventListener("dispose",h);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function u(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:u}}function xb(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Oo("WebGLRenderer: "+n+" extension not supported."),s}}}function yb(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let p in g.attributes)t.remove(g.attributes[p]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let x=r.get(g);x&&(t.remove(x),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,x){return s[x.id]!==void 0||(x.addEventListener("dispose",a),s[x.id]=new WeakRef(x),o.register(x,x.id,x),e.memory.geometries++),x}function h(g){let x=g.attributes;for(let p in x)t.update(x[p],i.ARRAY_BUFFER)}function u(g){let x=g.index,p=g.attributes.position,m=0;if(p===void 0)return;let y=x!==null?x.array.length:p.array.length/3-1,A=p.count>=65535?Yo:qo,M=new A(Math.ceil(y/3)*6,1),R=M.array;if(x!==null){let _=x.array;m=x.version;for(let b=0,F=0;b<y;b+=3){let I=_[b+0],C=_[b+1],V=_[b+2];R[F++]=I,R[F++]=C,R[F++]=C,R[F++]=V,R[F++]=V,R[F++]=I}}else{m=p.version;for(let _=0,b=0;_<y;_+=3){let F=_+0,I=_+1,C=_+2;R[b++]=F,R[b++]=I,R[b++]=I,R[b++]=C,R[b++]=C,R[b++]=F}}M.version=m;let w=r.get(g);w&&t.remove(w),r.set(g,M)}function d(g){let x=r.get(g);if(x){let p=g.index;p!==null&&x.version<p.version&&u(g)}else u(g);return r.get(g)}function f(){for(let g in s){let x=s[g].deref();x!==void 0&&l(x)}}return{get:c,update:h,getWireframeAttribute:d,dispose:f}}function vb(i,t,e){let n;function s(u){n=u}let r,o;function a(u){r=u.type,o=u.bytesPerElement}function l(u,d){i.drawElements(n,d,r,u*o),e.update(d,n,1)}function c(u,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,u*o,f),e.update(d,n,f))}function h(u,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,u,0,f);let x=0;for(let p=0;p<f;p++)x+=d[p];e.update(x,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function Mb(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ee("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function bb(i,t,e){let n=new WeakMap,s=new qe;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,u=h!==void 0?h.length:0,d=n.get(a);if(d===void 0||d.count!==u){let F=function(){_.dispose(),n.delete(a),a.removeEventListener("dispose",F)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,x=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],A=0;f===!0&&(A=1),g===!0&&(A=2),x===!0&&(A=3);let M=a.attributes.position.count*A,R=1;M>t.maxTextureSize&&(R=Math.ceil(M/t.maxTextureSize),M=t.maxTextureSize);let w=new Float32Array(M*R*4*u),_=new Wo(w,M,R,u);_.type=Li,_.needsUpdate=!0;let b=A*4;for(let I=0;I<u;I++){let C=p[I],V=m[I],U=y[I],P=M*R*4*I;for(let z=0;z<C.count;z++){let $=z*b;f===!0&&(s.fromBufferAttribute(C,z),w[P+$+0]=s.x,w[P+$+1]=s.y,w[P+$+2]=s.z,w[P+$+3]=0),g===!0&&(s.fromBufferAttribute(V,z),w[P+$+4]=s.x,w[P+$+5]=s.y,w[P+$+6]=s.z,w[P+$+7]=0),x===!0&&(s.fromBufferAttribute(U,z),w[P+$+8]=s.x,w[P+$+9]=s.y,w[P+$+10]=s.z,w[P+$+11]=U.itemSize===4?s.w:1)}}d={count:u,texture:_,size:new ne(M,R)},n.set(a,d),a.addEventListener("dispose",F)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let x=0;x<c.length;x++)f+=c[x];let g=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function Sb(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,u=c.geometry,d=t.get(c,u);if(r.get(d)!==h&&(t.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return d}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var wb={[Uu]:"LINEAR_TONE_MAPPING",[Fu]:"REINHARD_TONE_MAPPING",[Ou]:"CINEON_TONE_MAPPING",[Bu]:"ACES_FILMIC_TONE_MAPPING",[zu]:"AGX_TONE_MAPPING",[Vu]:"NEUTRAL_TONE_MAPPING",[ku]:"CUSTOM_TONE_MAPPING"};function Eb(i,t,e,n,s,r){let o=new hi(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new On;h.setAttribute("position",new Pn([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Pn([0,2,0,0,2,0],2));let u=new Gl({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Rn(h,u),f=new ra(-1,1,1,-1,0,1),g=null,x=null,p=!1,m,y=null,A=[],M=!1;this.setSize=function(R,w){o.setSize(R,w),a!==null&&a.setSize(R,w),l!==null&&l.setSize(R,w);for(let _=0;_<A.length;_++){let b=A[_];b.setSize&&b.setSize(R,w)}},this.setEffects=function(R){A=R,M=A.length>0&&A[0].isRenderPass===!0;let w=o.width,_=o.height;A.length>0&&a===null&&(a=new hi(w,_,{type:Di,depthBuffer:!1,stencilBuffer:!1}),l=new hi(w,_,{type:Di,depthBuffer:!1,stencilBuffer:!1}));let b=s===!0&&A.some(F=>F.needsDepthTexture===!0);b!==(o.depthTexture!==null)&&(b===!0&&c===null&&(c=new ds(w,_),r===!0&&(c.format=ps,c.type=lr)),o.dispose(),o.depthTexture=b?c:null,o.resolveDepthBuffer=b,o.storeMultisampledDepthBuffer=b);for(let F=0;F<A.length;F++){let I=A[F];I.setSize&&I.setSize(w,_),b&&I.needsDepthTexture===!0&&I.setDepthTexture&&I.setDepthTexture(c)}},this.begin=function(R,w){if(p||R.toneMapping===$i&&A.length===0)return!1;if(y=w,w!==null){let _=w.width,b=w.height;(o.width!==_||o.height!==b)&&this.setSize(_,b)}return M===!1&&R.setRenderTarget(o),m=R.toneMapping,R.toneMapping=$i,!0},this.hasRenderPass=function(){return M},this.end=function(R,w){R.toneMapping=m,p=!0;let _=o,b=a;for(let F=0;F<A.length;F++){let I=A[F];I.enabled!==!1&&(I.render(R,b,_,w),I.needsSwap!==!1&&(_=b,b=b===a?l:a))}if(g!==R.outputColorSpace||x!==R.toneMapping){g=R.outputColorSpace,x=R.toneMapping,u.defines={},ve.getTransfer(g)===Re&&(u.defines.SRGB_TRANSFER="");let F=wb[x];F&&(u.defines[F]=""),u.needsUpdate=!0}u.uniforms.tDiffuse.value=_.texture,R.setRenderTarget(y),R.render(d,f),y=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),u.dispose()}}var Ag=new Zn,Rg=new ds(1,1),Cg=new Ko(1),Pg=new Wo,Ig=new Ol,Lg=new jo,og=[],ag=[],lg=new Float32Array(16),cg=new Float32Array(9),hg=new Float32Array(4);function uo(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=og[s];if(r===void 0&&(r=new Float32Array(s),og[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function _n(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function xn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function Yc(i,t){let e=ag[t];e===void 0&&(e=new Int32Array(t),ag[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function Tb(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function Ab(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2fv(this.addr,t),xn(e,t)}}function Rb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(_n(e,t))return;i.uniform3fv(this.addr,t),xn(e,t)}}function Cb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4fv(this.addr,t),xn(e,t)}}function Pb(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;hg.set(n),i.uniformMatrix2fv(this.addr,!1,hg),xn(e,n)}}function Ib(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;cg.set(n),i.uniformMatrix3fv(this.addr,!1,cg),xn(e,n)}}function Lb(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;lg.set(n),i.uniformMatrix4fv(this.addr,!1,lg),xn(e,n)}}function Db(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function Nb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2iv(this.addr,t),xn(e,t)}}function Ub(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3iv(this.addr,t),xn(e,t)}}function Fb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4iv(this.addr,t),xn(e,t)}}function Ob(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function Bb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2uiv(this.addr,t),xn(e,t)}}function kb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3uiv(this.addr,t),xn(e,t)}}function zb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4uiv(this.addr,t),xn(e,t)}}function Zc(i){return i.version===0&&(i.compareFunction=Ku,i.needsUpdate=!0),i}function Vb(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Zc(Rg):r=Ag,e.setTexture2D(t||r,s)}function Gb(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Ig,s)}function Hb(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Zc(Cg):r=Lg,e.setTextureCube(t||r,s)}function Wb(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Pg,s)}function Xb(i){switch(i){case 5126:return Tb;case 35664:return Ab;case 35665:return Rb;case 35666:return Cb;case 35674:return Pb;case 35675:return Ib;case 35676:return Lb;case 5124:case 35670:return Db;case 35667:case 35671:return Nb;case 35668:case 35672:return Ub;case 35669:case 35673:return Fb;case 5125:return Ob;case 36294:return Bb;case 36295:return kb;case 36296:return zb;case 35678:case 36198:case 36298:case 36306:case 35682:return Vb;case 35679:case 36299:case 36307:return Gb;case 35680:case 36300:case 36308:case 36293:return Hb;case 36289:case 36303:case 36311:case 36292:return Wb}}function $b(i,t){i.uniform1fv(this.addr,t)}function qb(i,t){let e=uo(t,this.size,2);i.uniform2fv(this.addr,e)}function Yb(i,t){let e=uo(t,this.size,3);i.uniform3fv(this.addr,e)}function Zb(i,t){let e=uo(t,this.size,4);i.uniform4fv(this.addr,e)}function Jb(i,t){let e=uo(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function jb(i,t){let e=uo(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function Kb(i,t){let e=uo(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function Qb(i,t){i.uniform1iv(this.addr,t)}function tS(i,t){i.uniform2iv(this.addr,t)}function eS(i,t){i.uniform3iv(this.addr,t)}function nS(i,t){i.uniform4iv(this.addr,t)}function iS(i,t){i.uniform1uiv(this.addr,t)}function sS(i,t){i.uniform2uiv(this.addr,t)}function rS(i,t){i.uniform3uiv(this.addr,t)}function oS(i,t){i.uniform4uiv(this.addr,t)}function aS(i,t,e){let n=this.cache,s=t.length,r=Yc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=Zc(Rg):o=Ag;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function lS(i,t,e){let n=this.cache,s=t.length,r=Yc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Ig,r[o])}function cS(i,t,e){let n=this.cache,s=t.length,r=Yc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=Zc(Cg):o=Lg;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function hS(i,t,e){let n=this.cache,s=t.length,r=Yc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Pg,r[o])}function uS(i){switch(i){case 5126:return $b;case 35664:return qb;case 35665:return Yb;case 35666:return Zb;case 35674:return Jb;case 35675:return jb;case 35676:return Kb;case 5124:case 35670:return Qb;case 35667:case 35671:return tS;case 35668:case 35672:return eS;case 35669:case 35673:return nS;case 5125:return iS;case 36294:return sS;case 36295:return rS;case 36296:return oS;case 35678:case 36198:case 36298:case 36306:case 35682:return aS;case 35679:case 36299:case 36307:return lS;case 35680:case 36300:case 36308:case 36293:return cS;case 36289:case 36303:case 36311:case 36292:return hS}}var ud=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=Xb(e.type)}},dd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=uS(e.type)}},fd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},cd=/(\w+)(\])?(\[|\.)?/g;function ug(i,t){i.seq.push(t),i.map[t.id]=t}function dS(i,t,e){let n=i.name,s=n.length;for(cd.lastIndex=0;;){let r=cd.exec(n),o=cd.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){ug(e,c===void 0?new ud(a,i,t):new dd(a,i,t));break}else{let u=e.map[a];u===void 0&&(u=new fd(a),ug(e,u)),e=u}}}var ho=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);dS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function dg(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var fS=37297,pS=0;function mS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var fg=new ie;function gS(i){ve._getMatrix(fg,ve.workingColorSpace,i);let t=`mat3( ${fg.elements.map(e=>e.toFixed(4))} )`;switch(ve.getTransfer(i)){case Go:return[t,"LinearTransferOETF"];case Re:return[t,"sRGBTransferOETF"];default:return Yt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function pg(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+mS(i.getShaderSource(t),a)}else return r}function _S(i,t){let e=gS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var xS={[Uu]:"Linear",[Fu]:"Reinhard",[Ou]:"Cineon",[Bu]:"ACESFilmic",[zu]:"AgX",[Vu]:"Neutral",[ku]:"Custom"};function yS(i,t){let e=xS[t];return e===void 0?(Yt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Xc=new X;function vS(){ve.getLuminanceCoefficients(Xc);let i=Xc.x.toFixed(4),t=Xc.y.toFixed(4),e=Xc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function MS(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(xa).join(`
`)}function bS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function SS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function xa(i){return i!==""}function mg(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function gg(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var wS=/^[ \t]*#include +<([\w\d./]+)>/gm;function pd(i){return i.replace(wS,ES)}function ES(i,t){let e=ue[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return pd(e)}var TS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function _g(i){return i.replace(TS,AS)}function AS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function xg(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var RS={[ca]:"SHADOWMAP_TYPE_PCF",[ro]:"SHADOWMAP_TYPE_VSM"};function CS(i){return RS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var PS={[ao]:"ENVMAP_MODE_REFRACTION"};function IS(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":PS[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var LS={[ic]:"ENVMAP_BLENDING_MULTIPLY",[Nm]:"ENVMAP_BLENDING_MIX",[Um]:"ENVMAP_BLENDING_ADD"};function DS(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":LS[i.combine]||"ENVMAP_BLENDING_NONE"}function NS(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=CS(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=IS(e),u=DS(e),d=MS(e),f=bS(r),g=s.createProgram(),x,p,m=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(x=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(xa).join(`
`),x.length>0&&(x+=`
`),p=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(xa).join(`
`),p.length>0&&(p+=`
`)):(x=[xg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(xa).join(`
`),p=[xg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+u:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==$i?"#define TONE_MAPPING":"",e.toneMapping!==$i?ue.tonemapping_pars_fragment:"",e.toneMapping!==$i?yS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",ue.colorspace_pars_fragment,_S("linearToOutputTexel",e.outputColorSpace),vS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(xa).join(`
`)),o=pd(o),o=mg(o,e),o=gg(o,e),a=pd(a),a=mg(a,e),a=gg(a,e),o=_g(o),a=_g(a),e.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,x=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+x,p=["#define varying in",e.glslVersion===Qu?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Qu?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let y=m+x+o,A=m+p+a,M=dg(s,s.VERTEX_SHADER,y),R=dg(s,s.FRAGMENT_SHADER,A);s.attachShader(g,M),s.attachShader(g,R),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function w(I){if(i.debug.checkShaderErrors){let C=s.getProgramInfoLog(g)||"",V=s.getShaderInfoLog(M)||"",U=s.getShaderInfoLog(R)||"",P=C.trim(),z=V.trim(),$=U.trim(),O=!0,st=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(O=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,M,R);else{let W=pg(s,M,"vertex"),q=pg(s,R,"fragment");ee("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+I.name+`
Material Type: `+I.type+`

Program Info Log: `+P+`
`+W+`
`+q)}else P!==""?Yt("WebGLProgram: Program Info Log:",P):(z===""||$==="")&&(st=!1);st&&(I.diagnostics={runnable:O,programLog:P,vertexShader:{log:z,prefix:x},fragmentShader:{log:$,prefix:p}})}s.deleteShader(M),s.deleteShader(R),_=new ho(s,g),b=SS(s,g)}let _;this.getUniforms=function(){return _===void 0&&w(this),_};let b;this.getAttributes=function(){return b===void 0&&w(this),b};let F=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return F===!1&&(F=s.getProgramParameter(g,fS)),F},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=pS++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=M,this.fragmentShader=R,this}var US=0,md=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new gd(t),e.set(t,n)),n}},gd=class{constructor(t){this.id=US++,this.code=t,this.usedTimes=0}};function FS(i){return i===zs||i===ma||i===ga}function OS(i,t,e,n,s,r){let o=new Xo,a=new md,l=new Set,c=[],h=new Map,u=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(_){return l.add(_),_===0?"uv":`uv${_}`}function g(_,b,F,I,C,V){let U=I.fog,P=C.geometry,z=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?I.environment:null,$=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,O=t.get(_.envMap||z,$),st=d[_.type],W=n.precision;_.precision!==null&&(W=n.getMaxPrecision(_.precision),W!==_.precision&&Yt("WebGLProgram.getParameters:",_.precision,"not supported, using",W,"instead."));let q=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,et=q!==void 0?q.length:0,ht=0;P.morphAttributes.position!==void 0&&(ht=1),P.morphAttributes.normal!==void 0&&(ht=2),P.morphAttributes.color!==void 0&&(ht=3);let ut,K,gt,lt;if(st){let Ct=Yi[st];ut=Ct.vertexShader,K=Ct.fragmentShader}else{ut=_.vertexShader,K=_.fragmentShader;let Ct=a.getVertexShaderStage(_),le=a.getFragmentShaderStage(_);a.update(_,Ct,le),gt=Ct.id,lt=le.id}let pt=i.getRenderTarget(),xt=i.state.buffers.depth.getReversed(),Ht=C.isInstancedMesh===!0,jt=C.isBatchedMesh===!0,Vt=!!_.map,de=!!_.matcap,ce=!!O,se=ce&&O.isPMREMTexture===!0,Xe=!!_.aoMap,Oe=!!_.lightMap,rn=!!_.bumpMap&&_.wireframe===!1,Le=!!_.normalMap,vn=!!_.displacementMap,Me=!!_.emissiveMap,fn=!!_.metalnessMap,Ze=!!_.roughnessMap,on=_.anisotropy>0,k=_.clearcoat>0,Pt=_.diffuseRoughness>0,Zt=_.dispersion>0,ae=_.retroreflectivity>0,Et=_.iridescence>0,Ne=_.sheen>0,Gt=_.transmission>0,qt=on&&!!_.anisotropyMap,L=k&&!!_.clearcoatMap,S=k&&!!_.clearcoatNormalMap,Y=k&&!!_.clearcoatRoughnessMap,ft=Pt&&!!_.diffuseRoughnessMap,at=Et&&!!_.iridescenceMap,Mt=Et&&!!_.iridescenceThicknessMap,bt=Ne&&!!_.sheenColorMap,nt=Ne&&!!_.sheenRoughnessMap,rt=!!_.specularMap,yt=!!_.specularColorMap,B=!!_.specularIntensityMap,ot=Gt&&!!_.transmissionMap,it=Gt&&!!_.thicknessMap,Tt=!!_.gradientMap,vt=!!_.alphaMap,wt=_.alphaTest>0,Wt=!!_.alphaHash,Kt=!!_.extensions,dt=$i;_.toneMapped&&(pt===null||pt.isXRRenderTarget===!0)&&(dt=i.toneMapping);let Bt=se?O.isCompressedCubeTexture?O.image[0].mipmaps:O.mipmaps:null,Qt={shaderID:st,shaderType:_.type,shaderName:_.name,vertexShader:ut,fragmentShader:K,defines:_.defines,customVertexShaderID:gt,customFragmentShaderID:lt,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:W,batching:jt,batchingColor:jt&&C._colorsTexture!==null,instancing:Ht,instancingColor:Ht&&C.instanceColor!==null,instancingMorph:Ht&&C.morphTexture!==null,outputColorSpace:pt===null?i.outputColorSpace:pt.isXRRenderTarget===!0?pt.texture.colorSpace:ve.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:Vt,matcap:de,envMap:ce,envMapMode:ce&&O.mapping,envMapPMREM:se,envMapMaxLod:se?Bt.length-1:null,envMapSize:se?Bt[0].width:null,aoMap:Xe,lightMap:Oe,bumpMap:rn,normalMap:Le,displacementMap:vn,emissiveMap:Me,normalMapObjectSpace:Le&&_.normalMapType===Bm,normalMapTangentSpace:Le&&_.normalMapType===Hc,packedNormalMap:Le&&_.normalMapType===Hc&&FS(_.normalMap.format),metalnessMap:fn,roughnessMap:Ze,anisotropy:on,anisotropyMap:qt,clearcoat:k,clearcoatMap:L,clearcoatNormalMap:S,clearcoatRoughnessMap:Y,diffuseRoughness:Pt,diffuseRoughnessMap:ft,dispersion:Zt,retroreflection:ae,iridescence:Et,iridescenceMap:at,iridescenceThicknessMap:Mt,sheen:Ne,sheenColorMap:bt,sheenRoughnessMap:nt,specularMap:rt,specularColorMap:yt,specularIntensityMap:B,transmission:Gt,transmissionMap:ot,thicknessMap:it,gradientMap:Tt,opaque:_.transparent===!1&&_.blending===oo&&_.alphaToCoverage===!1,alphaMap:vt,alphaTest:wt,alphaHash:Wt,combine:_.combine,mapUv:Vt&&f(_.map.channel),aoMapUv:Xe&&f(_.aoMap.channel),lightMapUv:Oe&&f(_.lightMap.channel),bumpMapUv:rn&&f(_.bumpMap.channel),normalMapUv:Le&&f(_.normalMap.channel),displacementMapUv:vn&&f(_.displacementMap.channel),emissiveMapUv:Me&&f(_.emissiveMap.channel),metalnessMapUv:fn&&f(_.metalnessMap.channel),roughnessMapUv:Ze&&f(_.roughnessMap.channel),anisotropyMapUv:qt&&f(_.anisotropyMap.channel),clearcoatMapUv:L&&f(_.clearcoatMap.channel),clearcoatNormalMapUv:S&&f(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:Y&&f(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ft&&f(_.diffuseRoughnessMap.channel),iridescenceMapUv:at&&f(_.iridescenceMap.channel),iridescenceThicknessMapUv:Mt&&f(_.iridescenceThicknessMap.channel),sheenColorMapUv:bt&&f(_.sheenColorMap.channel),sheenRoughnessMapUv:nt&&f(_.sheenRoughnessMap.channel),specularMapUv:rt&&f(_.specularMap.channel),specularColorMapUv:yt&&f(_.specularColorMap.channel),specularIntensityMapUv:B&&f(_.specularIntensityMap.channel),transmissionMapUv:ot&&f(_.transmissionMap.channel),thicknessMapUv:it&&f(_.thicknessMap.channel),alphaMapUv:vt&&f(_.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(Le||on),vertexNormals:!!P.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:C.isPoints===!0&&!!P.attributes.uv&&(Vt||vt),fog:!!U,useFog:_.fog===!0,fogExp2:!!U&&U.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||P.attributes.normal===void 0&&Le===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:u,reversedDepthBuffer:xt,skinning:C.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:et,morphTextureStride:ht,numSunLights:b.sun.length,numDirLights:b.directional.length,numPointLights:b.point.length,numSpotLights:b.spot.length,numSpotLightMaps:b.spotLightMap.length,numRectAreaLights:b.rectArea.length,numHemiLights:b.hemi.length,numSunLightShadows:b.sunShadowMap.length,numDirLightShadows:b.directionalShadowMap.length,numPointLightShadows:b.pointShadowMap.length,numSpotLightShadows:b.spotShadowMap.length,numSpotLightShadowsWithMaps:b.numSpotLightShadowsWithMaps,numLightProbes:b.numLightProbes,numLightProbeGrids:V.filter(Ct=>Ct.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:_.dithering,shadowMapEnabled:i.shadowMap.enabled&&F.length>0,shadowMapType:i.shadowMap.type,toneMapping:dt,decodeVideoTexture:Vt&&_.map.isVideoTexture===!0&&ve.getTransfer(_.map.colorSpace)===Re,decodeVideoTextureEmissive:Me&&_.emissiveMap.isVideoTexture===!0&&ve.getTransfer(_.emissiveMap.colorSpace)===Re,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===Yn,flipSided:_.side===In,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:Kt&&_.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Kt&&_.extensions.multiDraw===!0||jt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return Qt.vertexUv1s=l.has(1),Qt.vertexUv2s=l.has(2),Qt.vertexUv3s=l.has(3),l.clear(),Qt}function x(_){let b=[];if(_.shaderID?b.push(_.shaderID):(b.push(_.customVertexShaderID),b.push(_.customFragmentShaderID)),_.defines!==void 0)for(let F in _.defines)b.push(F),b.push(_.defines[F]);return _.isRawShaderMaterial===!1&&(p(b,_),m(b,_),b.push(i.outputColorSpace)),b.push(_.customProgramCacheKey),b.join()}function p(_,b){_.push(b.precision),_.push(b.outputColorSpace),_.push(b.envMapMode),_.push(b.envMapPMREM),_.push(b.envMapMaxLod),_.push(b.envMapSize),_.push(b.mapUv),_.push(b.alphaMapUv),_.push(b.lightMapUv),_.push(b.aoMapUv),_.push(b.bumpMapUv),_.push(b.normalMapUv),_.push(b.displacementMapUv),_.push(b.emissiveMapUv),_.push(b.metalnessMapUv),_.push(b.roughnessMapUv),_.push(b.anisotropyMapUv),_.push(b.clearcoatMapUv),_.push(b.clearcoatNormalMapUv),_.push(b.clearcoatRoughnessMapUv),_.push(b.diffuseRoughnessMapUv),_.push(b.iridescenceMapUv),_.push(b.iridescenceThicknessMapUv),_.push(b.sheenColorMapUv),_.push(b.sheenRoughnessMapUv),_.push(b.specularMapUv),_.push(b.specularColorMapUv),_.push(b.specularIntensityMapUv),_.push(b.transmissionMapUv),_.push(b.thicknessMapUv),_.push(b.combine),_.push(b.fogExp2),_.push(b.sizeAttenuation),_.push(b.morphTargetsCount),_.push(b.numSunLights),_.push(b.numDirLights),_.push(b.numPointLights),_.push(b.numSpotLights),_.push(b.numSpotLightMaps),_.push(b.numHemiLights),_.push(b.numRectAreaLights),_.push(b.numSunLightShadows),_.push(b.numDirLightShadows),_.push(b.numPointLightShadows),_.push(b.numSpotLightShadows),_.push(b.numSpotLightShadowsWithMaps),_.push(b.numLightProbes),_.push(b.numLightProbeGrids),_.push(b.shadowMapType),_.push(b.toneMapping),_.push(b.numClippingPlanes),_.push(b.numClipIntersection),_.push(b.depthPacking)}function m(_,b){o.disableAll(),b.instancing&&o.enable(0),b.instancingColor&&o.enable(1),b.instancingMorph&&o.enable(2),b.matcap&&o.enable(3),b.envMap&&o.enable(4),b.normalMapObjectSpace&&o.enable(5),b.normalMapTangentSpace&&o.enable(6),b.clearcoat&&o.enable(7),b.iridescence&&o.enable(8),b.alphaTest&&o.enable(9),b.vertexColors&&o.enable(10),b.vertexAlphas&&o.enable(11),b.vertexUv1s&&o.enable(12),b.vertexUv2s&&o.enable(13),b.vertexUv3s&&o.enable(14),b.vertexTangents&&o.enable(15),b.anisotropy&&o.enable(16),b.alphaHash&&o.enable(17),b.batching&&o.enable(18),b.dispersion&&o.enable(19),b.retroreflection&&o.enable(24),b.diffuseRoughness&&o.enable(25),b.batchingColor&&o.enable(20),b.gradientMap&&o.enable(21),b.packedNormalMap&&o.enable(22),b.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),b.fog&&o.enable(0),b.useFog&&o.enable(1),b.flatShading&&o.enable(2),b.logarithmicDepthBuffer&&o.enable(3),b.reversedDepthBuffer&&o.enable(4),b.skinning&&o.enable(5),b.morphTargets&&o.enable(6),b.morphNormals&&o.enable(7),b.morphColors&&o.enable(8),b.premultipliedAlpha&&o.enable(9),b.shadowMapEnabled&&o.enable(10),b.doubleSided&&o.enable(11),b.flipSided&&o.enable(12),b.useDepthPacking&&o.enable(13),b.dithering&&o.enable(14),b.transmission&&o.enable(15),b.sheen&&o.enable(16),b.opaque&&o.enable(17),b.pointsUvs&&o.enable(18),b.decodeVideoTexture&&o.enable(19),b.decodeVideoTextureEmissive&&o.enable(20),b.alphaToCoverage&&o.enable(21),b.numLightProbeGrids>0&&o.enable(22),b.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function y(_){let b=d[_.type],F;if(b){let I=Yi[b];F=Qm.clone(I.uniforms)}else F=_.uniforms;return F}function A(_,b){let F=h.get(b);return F!==void 0?++F.usedTimes:(F=new NS(i,b,_,s),c.push(F),h.set(b,F)),F}function M(_){if(--_.usedTimes===0){let b=c.indexOf(_);c[b]=c[c.length-1],c.pop(),h.delete(_.cacheKey),_.destroy()}}function R(_){a.remove(_)}function w(){a.dispose()}return{getParameters:g,getProgramCacheKey:x,getUniforms:y,acquireProgram:A,releaseProgram:M,releaseShaderCache:R,programs:c,dispose:w}}function BS(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function kS(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function yg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function vg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,x,p,m){let y=i[t];return y===void 0?(y={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:x,renderOrder:d.renderOrder,z:p,group:m},i[t]=y):(y.id=d.id,y.object=d,y.geometry=f,y.material=g,y.materialVariant=o(d),y.groupOrder=x,y.renderOrder=d.renderOrder,y.z=p,y.group=m),t++,y}function l(d,f,g,x,p,m,y){y.reversedDepth===!0&&(p=-p);let A=a(d,f,g,x,p,m);g.transmission>0?n.push(A):g.transparent===!0?s.push(A):e.push(A)}function c(d,f,g,x,p,m){let y=a(d,f,g,x,p,m);g.transmission>0?n.unshift(y):g.transparent===!0?s.unshift(y):e.unshift(y)}function h(d,f){e.length>1&&e.sort(d||kS),n.length>1&&n.sort(f||yg),s.length>1&&s.sort(f||yg)}function u(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:u,sort:h}}function zS(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new vg,i.set(n,[o])):s>=r.length?(o=new vg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function VS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new X,color:new oe};break;case"SpotLight":e={position:new X,direction:new X,color:new oe,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new X,color:new oe,distance:0,decay:0};break;case"HemisphereLight":e={direction:new X,skyColor:new oe,groundColor:new oe};break;case"RectAreaLight":e={color:new oe,position:new X,halfWidth:new X,halfHeight:new X};break}return i[t.id]=e,e}}}function GS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ne,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var HS=0;function WS(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function XS(i){let t=new VS,e=GS(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new X);let s=new X,r=new We,o=new We;function a(c){let h=0,u=0,d=0;for(let V=0;V<9;V++)n.probe[V].set(0,0,0);let f=0,g=0,x=0,p=0,m=0,y=0,A=0,M=0,R=0,w=0,_=0,b=0,F=0,I=0;c.sort(WS);for(let V=0,U=c.length;V<U;V++){let P=c[V],z=P.color,$=P.intensity,O=P.distance,st=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===zs?st=P.shadow.map.texture:st=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)h+=z.r*$,u+=z.g*$,d+=z.b*$;else if(P.isLightProbe){for(let W=0;W<9;W++)n.probe[W].addScaledVector(P.sh.coefficients[W],$);I++}else if(P.isSunLight){let W=t.get(P);if(W.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let q=P.shadow,et=e.get(P);et.shadowIntensity=q.intensity,et.shadowBias=q.bias,et.shadowNormalBias=q.normalBias,et.shadowRadius=q.radius,et.shadowMapSize.copy(q.mapSize).multiply(q.getFrameExtents()),n.sunShadow[g]=et,n.sunShadowMap[g]=st;let ht=q.getViewportCount();for(let ut=0;ut<ht;ut++)n.sunShadowMatrix[x+ut]=q.getMatrix(ut),n.sunShadowCascade[x+ut]=q._cascadeData[ut];x+=ht,g++}n.sun[f]=W,f++}else if(P.isDirectionalLight){let W=t.get(P);if(W.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let q=P.shadow,et=e.get(P);et.shadowIntensity=q.intensity,et.shadowBias=q.bias,et.shadowNormalBias=q.normalBias,et.shadowRadius=q.radius,et.shadowMapSize=q.mapSize,n.directionalShadow[p]=et,n.directionalShadowMap[p]=st,n.directionalShadowMatrix[p]=P.shadow.matrix,R++}n.directional[p]=W,p++}else if(P.isSpotLight){let W=t.get(P);W.position.setFromMatrixPosition(P.matrixWorld),W.color.copy(z).multiplyScalar($),W.distance=O,W.coneCos=Math.cos(P.angle),W.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),W.decay=P.decay,n.spot[y]=W;let q=P.shadow;if(P.map&&(n.spotLightMap[b]=P.map,b++,q.updateMatrices(P),P.castShadow&&F++),n.spotLightMatrix[y]=q.matrix,P.castShadow){let et=e.get(P);et.shadowIntensity=q.intensity,et.shadowBias=q.bias,et.shadowNormalBias=q.normalBias,et.shadowRadius=q.radius,et.shadowMapSize=q.mapSize,n.spotShadow[y]=et,n.spotShadowMap[y]=st,_++}y++}else if(P.isRectAreaLight){let W=t.get(P);W.color.copy(z).multiplyScalar($),W.halfWidth.set(P.width*.5,0,0),W.halfHeight.set(0,P.height*.5,0),n.rectArea[A]=W,A++}else if(P.isPointLight){let W=t.get(P);if(W.color.copy(P.color).multiplyScalar(P.intensity),W.distance=P.distance,W.decay=P.decay,P.castShadow){let q=P.shadow,et=e.get(P);et.shadowIntensity=q.intensity,et.shadowBias=q.bias,et.shadowNormalBias=q.normalBias,et.shadowRadius=q.radius,et.shadowMapSize=q.mapSize,et.shadowCameraNear=q.camera.near,et.shadowCameraFar=q.camera.far,n.pointShadow[m]=et,n.pointShadowMap[m]=st,n.pointShadowMatrix[m]=P.shadow.matrix,w++}n.point[m]=W,m++}else if(P.isHemisphereLight){let W=t.get(P);W.skyColor.copy(P.color).multiplyScalar($),W.groundColor.copy(P.groundColor).multiplyScalar($),n.hemi[M]=W,M++}}A>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Dt.LTC_FLOAT_1,n.rectAreaLTC2=Dt.LTC_FLOAT_2):(n.rectAreaLTC1=Dt.LTC_HALF_1,n.rectAreaLTC2=Dt.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=u,n.ambient[2]=d;let C=n.hash;(C.sunLength!==f||C.directionalLength!==p||C.pointLength!==m||C.spotLength!==y||C.rectAreaLength!==A||C.hemiLength!==M||C.numSunShadows!==g||C.numDirectionalShadows!==R||C.numPointShadows!==w||C.numSpotShadows!==_||C.numSpotMaps!==b||C.numLightProbes!==I)&&(n.sun.length=f,n.directional.length=p,n.spot.length=y,n.rectArea.length=A,n.point.length=m,n.hemi.length=M,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=x,n.sunShadowCascade.length=x,n.directionalShadow.length=R,n.directionalShadowMap.length=R,n.directionalShadowMatrix.length=R,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=_,n.spotShadowMap.length=_,n.spotLightMatrix.length=_+b-F,n.spotLightMap.length=b,n.numSpotLightShadowsWithMaps=F,n.numLightProbes=I,C.sunLength=f,C.directionalLength=p,C.pointLength=m,C.spotLength=y,C.rectAreaLength=A,C.hemiLength=M,C.numSunShadows=g,C.numDirectionalShadows=R,C.numPointShadows=w,C.numSpotShadows=_,C.numSpotMaps=b,C.numLightProbes=I,n.version=HS++)}function l(c,h){let u=0,d=0,f=0,g=0,x=0,p=0,m=h.matrixWorldInverse;for(let y=0,A=c.length;y<A;y++){let M=c[y];if(M.isSunLight){let R=n.sun[u];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),u++}else if(M.isDirectionalLight){let R=n.directional[d];R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),d++}else if(M.isSpotLight){let R=n.spot[g];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),g++}else if(M.isRectAreaLight){let R=n.rectArea[x];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),o.identity(),r.copy(M.matrixWorld),r.premultiply(m),o.extractRotation(r),R.halfWidth.set(M.width*.5,0,0),R.halfHeight.set(0,M.height*.5,0),R.halfWidth.applyMatrix4(o),R.halfHeight.applyMatrix4(o),x++}else if(M.isPointLight){let R=n.point[f];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),f++}else if(M.isHemisphereLight){let R=n.hemi[p];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),p++}}}return{setup:a,setupView:l,state:n}}function Mg(i){let t=new XS(i),e=[],n=[],s=[];function r(u){h.camera=u,e.length=0,n.length=0,s.length=0}function o(u){u.isLightProbeGrid?s.push(u):e.push(u)}function a(u){n.push(u)}function l(){t.setup(e),s.sort((u,d)=>u.priority-d.priority||u.id-d.id)}function c(u){t.setupView(e,u)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function $S(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new Mg(i),t.set(s,[a])):r>=o.length?(a=new Mg(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var qS=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,YS=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,ZS=[new X(1,0,0),new X(-1,0,0),new X(0,1,0),new X(0,-1,0),new X(0,0,1),new X(0,0,-1)],JS=[new X(0,-1,0),new X(0,-1,0),new X(0,0,1),new X(0,0,-1),new X(0,-1,0),new X(0,-1,0)],bg=new We,_a=new X,hd=new X;function jS(i,t,e){let n=new Ds,s=new ne,r=new ne,o=new qe,a=new Hl,l=new Wl,c={},h=e.maxTextureSize,u={[Pi]:In,[In]:Pi,[Yn]:Yn},d=new Xi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ne},radius:{value:4}},vertexShader:qS,fragmentShader:YS}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new On;g.setAttribute("position",new Un(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let x=new Rn(g,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=ca;let m=this.type;this.render=function(w,_,b){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||w.length===0)return;this.type===mm&&(Yt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=ca);let F=i.getRenderTarget(),I=i.getActiveCubeFace(),C=i.getActiveMipmapLevel(),V=i.state;V.setBlending(rr),V.buffers.depth.getReversed()===!0?V.buffers.color.setClear(0,0,0,0):V.buffers.color.setClear(1,1,1,1),V.buffers.depth.setTest(!0),V.setScissorTest(!1);let U=m!==this.type;U&&_.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(z=>z.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,z=w.length;P<z;P++){let $=w[P],O=$.shadow;if(O===void 0){Yt("WebGLShadowMap:",$,"has no shadow.");continue}if(O.autoUpdate===!1&&O.needsUpdate===!1)continue;s.copy(O.mapSize);let st=O.getFrameExtents();s.multiply(st),r.copy(O.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/st.x),s.x=r.x*st.x,O.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/st.y),s.y=r.y*st.y,O.mapSize.y=r.y));let W=i.state.buffers.depth.getReversed();if(O.camera._reversedDepth=W,O.map===null||U===!0){if(O.map!==null&&(O.map.depthTexture!==null&&(O.map.depthTexture.dispose(),O.map.depthTexture=null),O.map.dispose()),this.type===ro){if($.isPointLight){Yt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}O.map=new hi(s.x,s.y,{format:zs,type:Di,minFilter:qn,magFilter:qn,generateMipmaps:!1}),O.map.texture.name=$.name+".shadowMap",O.map.depthTexture=new ds(s.x,s.y,Li),O.map.depthTexture.name=$.name+".shadowMapDepth",O.map.depthTexture.format=ls,O.map.depthTexture.compareFunction=null,O.map.depthTexture.minFilter=An,O.map.depthTexture.magFilter=An}else $.isPointLight?(O.map=new ya(s.x),O.map.depthTexture=new Ko(s.x,Ii)):(O.map=new hi(s.x,s.y),O.map.depthTexture=new ds(s.x,s.y,Ii)),O.map.depthTexture.name=$.name+".shadowMap",O.map.depthTexture.format=ls,this.type===ca?(O.map.depthTexture.compareFunction=W?ju:Ju,O.map.depthTexture.minFilter=qn,O.map.depthTexture.magFilter=qn):(O.map.depthTexture.compareFunction=null,O.map.depthTexture.minFilter=An,O.map.depthTexture.magFilter=An);O.camera.updateProjectionMatrix()}O.map.isWebGLCubeRenderTarget!==!0&&(O.map.width!==s.x||O.map.height!==s.y)&&O.map.setSize(s.x,s.y);let q=O.map.isWebGLCubeRenderTarget?6:O.getViewportCount();$.isPointLight!==!0&&O.updateMatrices($,b);let et=(O.camera.layers.mask&4294967294)!==0?O.camera.layers:b.layers;for(let ht=0;ht<q;ht++){let ut=O.getCamera(ht);if($.isPointLight){let K=O.camera,gt=O.matrix,lt=$.distance||K.far;lt!==K.far&&(K.far=lt,K.updateProjectionMatrix()),_a.setFromMatrixPosition($.matrixWorld),K.position.copy(_a),hd.copy(K.position),hd.add(ZS[ht]),K.up.copy(JS[ht]),K.lookAt(hd),K.updateMatrixWorld(),gt.makeTranslation(-_a.x,-_a.y,-_a.z),bg.multiplyMatrices(K.projectionMatrix,K.matrixWorldInverse),O._frustum.setFromProjectionMatrix(bg,K.coordinateSystem,K.reversedDepth)}if(O.map.isWebGLCubeRenderTarget)i.setRenderTarget(O.map,ht),i.clear();else{ht===0&&(i.setRenderTarget(O.map),i.clear());let K=O.getViewport(ht);o.set(r.x*K.x,r.y*K.y,r.x*K.z,r.y*K.w),V.viewport(o)}n=O.getFrustum(ht),M(_,b,ut,$,et,this.type)}O.isPointLightShadow!==!0&&this.type===ro&&y(O,b),O.needsUpdate=!1}m=this.type,p.needsUpdate=!1,i.setRenderTarget(F,I,C)};function y(w,_){let b=t.update(x);d.defines.VSM_SAMPLES!==w.blurSamples&&(d.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new hi(s.x,s.y,{format:zs,type:Di}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),d.uniforms.shadow_pass.value=w.map.depthTexture,d.uniforms.resolution.value.set(w.map.width,w.map.height),d.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(_,null,b,d,x,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(_,null,b,f,x,null)}function A(w,_,b,F){let I=null,C=b.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(C!==void 0)I=C;else if(I=b.isPointLight===!0?l:a,i.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let V=I.uuid,U=_.uuid,P=c[V];P===void 0&&(P={},c[V]=P);let z=P[U];z===void 0&&(z=I.clone(),P[U]=z,_.addEventListener("dispose",R)),I=z}if(I.visible=_.visible,I.wireframe=_.wireframe,F===ro?I.side=_.shadowSide!==null?_.shadowSide:_.side:I.side=_.shadowSide!==null?_.shadowSide:u[_.side],I.alphaMap=_.alphaMap,I.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,I.map=_.map,I.clipShadows=_.clipShadows,I.clippingPlanes=_.clippingPlanes,I.clipIntersection=_.clipIntersection,I.displacementMap=_.displacementMap,I.displacementScale=_.displacementScale,I.displacementBias=_.displacementBias,I.wireframeLinewidth=_.wireframeLinewidth,I.linewidth=_.linewidth,b.isPointLight===!0&&I.isMeshDistanceMaterial===!0){let V=i.properties.get(I);V.light=b}return I}function M(w,_,b,F,I,C){if(w.visible===!1)return;if(w.layers.test(I)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&C===ro)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(b.matrixWorldInverse,w.matrixWorld);let P=t.update(w),z=w.material;if(Array.isArray(z)){let $=P.groups;for(let O=0,st=$.length;O<st;O++){let W=$[O],q=z[W.materialIndex];if(q&&q.visible){let et=A(w,q,F,C);w.onBeforeShadow(i,w,_,b,P,et,W),i.renderBufferDirect(b,null,P,et,w,W),w.onAfterShadow(i,w,_,b,P,et,W)}}}else if(z.visible){let $=A(w,z,F,C);w.onBeforeShadow(i,w,_,b,P,$,null),i.renderBufferDirect(b,null,P,$,w,null),w.onAfterShadow(i,w,_,b,P,$,null)}}let U=w.children;for(let P=0,z=U.length;P<z;P++)M(U[P],_,b,F,I,C)}function R(w){w.target.removeEventListener("dispose",R);for(let b in c){let F=c[b],I=w.target.uuid;I in F&&(F[I].dispose(),delete F[I])}}}function KS(i,t){function e(){let B=!1,ot=new qe,it=null,Tt=new qe(0,0,0,0);return{setMask:function(vt){it!==vt&&!B&&(i.colorMask(vt,vt,vt,vt),it=vt)},setLocked:function(vt){B=vt},setClear:function(vt,wt,Wt,Kt,dt){dt===!0&&(vt*=Kt,wt*=Kt,Wt*=Kt),ot.set(vt,wt,Wt,Kt),Tt.equals(ot)===!1&&(i.clearColor(vt,wt,Wt,Kt),Tt.copy(ot))},reset:function(){B=!1,it=null,Tt.set(-1,0,0,0)}}}function n(){let B=!1,ot=!1,it=null,Tt=null,vt=null;return{setReversed:function(wt){if(ot!==wt){let Wt=t.get("EXT_clip_control");wt?Wt.clipControlEXT(Wt.LOWER_LEFT_EXT,Wt.ZERO_TO_ONE_EXT):Wt.clipControlEXT(Wt.LOWER_LEFT_EXT,Wt.NEGATIVE_ONE_TO_ONE_EXT),ot=wt;let Kt=vt;vt=null,this.setClear(Kt)}},getReversed:function(){return ot},setTest:function(wt){wt?xt(i.DEPTH_TEST):Ht(i.DEPTH_TEST)},setMask:function(wt){it!==wt&&!B&&(i.depthMask(wt),it=wt)},setFunc:function(wt){if(ot&&(wt=Zm[wt]),Tt!==wt){switch(wt){case El:i.depthFunc(i.NEVER);break;case Tl:i.depthFunc(i.ALWAYS);break;case Al:i.depthFunc(i.LESS);break;case Zr:i.depthFunc(i.LEQUAL);break;case Rl:i.depthFunc(i.EQUAL);break;case Cl:i.depthFunc(i.GEQUAL);break;case Pl:i.depthFunc(i.GREATER);break;case Il:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Tt=wt}},setLocked:function(wt){B=wt},setClear:function(wt){vt!==wt&&(vt=wt,ot&&(wt=1-wt),i.clearDepth(wt))},reset:function(){B=!1,it=null,Tt=null,vt=null,ot=!1}}}function s(){let B=!1,ot=null,it=null,Tt=null,vt=null,wt=null,Wt=null,Kt=null,dt=null;return{setTest:function(Bt){B||(Bt?xt(i.STENCIL_TEST):Ht(i.STENCIL_TEST))},setMask:function(Bt){ot!==Bt&&!B&&(i.stencilMask(Bt),ot=Bt)},setFunc:function(Bt,Qt,Ct){(it!==Bt||Tt!==Qt||vt!==Ct)&&(i.stencilFunc(Bt,Qt,Ct),it=Bt,Tt=Qt,vt=Ct)},setOp:function(Bt,Qt,Ct){(wt!==Bt||Wt!==Qt||Kt!==Ct)&&(i.stencilOp(Bt,Qt,Ct),wt=Bt,Wt=Qt,Kt=Ct)},setLocked:function(Bt){B=Bt},setClear:function(Bt){dt!==Bt&&(i.clearStencil(Bt),dt=Bt)},reset:function(){B=!1,ot=null,it=null,Tt=null,vt=null,wt=null,Wt=null,Kt=null,dt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},u={},d={},f=new WeakMap,g=[],x=null,p=!1,m=null,y=null,A=null,M=null,R=null,w=null,_=null,b=new oe(0,0,0),F=0,I=!1,C=null,V=null,U=null,P=null,z=null,$=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),O=!1,st=0,W=i.getParameter(i.VERSION);W.indexOf("WebGL")!==-1?(st=parseFloat(/^WebGL (\d)/.exec(W)[1]),O=st>=1):W.indexOf("OpenGL ES")!==-1&&(st=parseFloat(/^OpenGL ES (\d)/.exec(W)[1]),O=st>=2);let q=null,et={},ht=i.getParameter(i.SCISSOR_BOX),ut=i.getParameter(i.VIEWPORT),K=new qe().fromArray(ht),gt=new qe().fromArray(ut);function lt(B,ot,it,Tt){let vt=new Uint8Array(4),wt=i.createTexture();i.bindTexture(B,wt),i.texParameteri(B,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(B,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Wt=0;Wt<it;Wt++)B===i.TEXTURE_3D||B===i.TEXTURE_2D_ARRAY?i.texImage3D(ot,0,i.RGBA,1,1,Tt,0,i.RGBA,i.UNSIGNED_BYTE,vt):i.texImage2D(ot+Wt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,vt);return wt}let pt={};pt[i.TEXTURE_2D]=lt(i.TEXTURE_2D,i.TEXTURE_2D,1),pt[i.TEXTURE_CUBE_MAP]=lt(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),pt[i.TEXTURE_2D_ARRAY]=lt(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),pt[i.TEXTURE_3D]=lt(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),xt(i.DEPTH_TEST),o.setFunc(Zr),rn(!1),Le(Cu),xt(i.CULL_FACE),Xe(rr);function xt(B){h[B]!==!0&&(i.enable(B),h[B]=!0)}function Ht(B){h[B]!==!1&&(i.disable(B),h[B]=!1)}function jt(B,ot){return d[B]!==ot?(i.bindFramebuffer(B,ot),d[B]=ot,B===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=ot),B===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=ot),!0):!1}function Vt(B,ot){let it=g,Tt=!1;if(B){it=f.get(ot),it===void 0&&(it=[],f.set(ot,it));let vt=B.textures;if(it.length!==vt.length||it[0]!==i.COLOR_ATTACHMENT0){for(let wt=0,Wt=vt.length;wt<Wt;wt++)it[wt]=i.COLOR_ATTACHMENT0+wt;it.length=vt.length,Tt=!0}}else it[0]!==i.BACK&&(it[0]=i.BACK,Tt=!0);Tt&&i.drawBuffers(it)}function de(B){return x!==B?(i.useProgram(B),x=B,!0):!1}let ce={[or]:i.FUNC_ADD,[_m]:i.FUNC_SUBTRACT,[xm]:i.FUNC_REVERSE_SUBTRACT};ce[ym]=i.MIN,ce[vm]=i.MAX;let se={[Mm]:i.ZERO,[bm]:i.ONE,[Sm]:i.SRC_COLOR,[Du]:i.SRC_ALPHA,[Cm]:i.SRC_ALPHA_SATURATE,[Am]:i.DST_COLOR,[Em]:i.DST_ALPHA,[wm]:i.ONE_MINUS_SRC_COLOR,[Nu]:i.ONE_MINUS_SRC_ALPHA,[Rm]:i.ONE_MINUS_DST_COLOR,[Tm]:i.ONE_MINUS_DST_ALPHA,[Pm]:i.CONSTANT_COLOR,[Im]:i.ONE_MINUS_CONSTANT_COLOR,[Lm]:i.CONSTANT_ALPHA,[Dm]:i.ONE_MINUS_CONSTANT_ALPHA};function Xe(B,ot,it,Tt,vt,wt,Wt,Kt,dt,Bt){if(B===rr){p===!0&&(Ht(i.BLEND),p=!1);return}if(p===!1&&(xt(i.BLEND),p=!0),B!==gm){if(B!==m||Bt!==I){if((y!==or||R!==or)&&(i.blendEquation(i.FUNC_ADD),y=or,R=or),Bt)switch(B){case oo:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Pu:i.blendFunc(i.ONE,i.ONE);break;case Iu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Lu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ee("WebGLState: Invalid blending: ",B);break}else switch(B){case oo:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Pu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Iu:ee("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Lu:ee("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ee("WebGLState: Invalid blending: ",B);break}A=null,M=null,w=null,_=null,b.set(0,0,0),F=0,m=B,I=Bt}return}vt=vt||ot,wt=wt||it,Wt=Wt||Tt,(ot!==y||vt!==R)&&(i.blendEquationSeparate(ce[ot],ce[vt]),y=ot,R=vt),(it!==A||Tt!==M||wt!==w||Wt!==_)&&(i.blendFuncSeparate(se[it],se[Tt],se[wt],se[Wt]),A=it,M=Tt,w=wt,_=Wt),(Kt.equals(b)===!1||dt!==F)&&(i.blendColor(Kt.r,Kt.g,Kt.b,dt),b.copy(Kt),F=dt),m=B,I=!1}function Oe(B,ot){B.side===Yn?Ht(i.CULL_FACE):xt(i.CULL_FACE);let it=B.side===In;ot&&(it=!it),rn(it),B.blending===oo&&B.transparent===!1?Xe(rr):Xe(B.blending,B.blendEquation,B.blendSrc,B.blendDst,B.blendEquationAlpha,B.blendSrcAlpha,B.blendDstAlpha,B.blendColor,B.blendAlpha,B.premultipliedAlpha),o.setFunc(B.depthFunc),o.setTest(B.depthTest),o.setMask(B.depthWrite),r.setMask(B.colorWrite);let Tt=B.stencilWrite;a.setTest(Tt),Tt&&(a.setMask(B.stencilWriteMask),a.setFunc(B.stencilFunc,B.stencilRef,B.stencilFuncMask),a.setOp(B.stencilFail,B.stencilZFail,B.stencilZPass)),Me(B.polygonOffset,B.polygonOffsetFactor,B.polygonOffsetUnits),B.alphaToCoverage===!0?xt(i.SAMPLE_ALPHA_TO_COVERAGE):Ht(i.SAMPLE_ALPHA_TO_COVERAGE)}function rn(B){C!==B&&(B?i.frontFace(i.CW):i.frontFace(i.CCW),C=B)}function Le(B){B!==fm?(xt(i.CULL_FACE),B!==V&&(B===Cu?i.cullFace(i.BACK):B===pm?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Ht(i.CULL_FACE),V=B}function vn(B){B!==U&&(O&&i.lineWidth(B),U=B)}function Me(B,ot,it){B?(xt(i.POLYGON_OFFSET_FILL),(P!==ot||z!==it)&&(P=ot,z=it,o.getReversed()&&(ot=-ot,it=-it),i.polygonOffset(ot,it))):Ht(i.POLYGON_OFFSET_FILL)}function fn(B){B?xt(i.SCISSOR_TEST):Ht(i.SCISSOR_TEST)}function Ze(B){B===void 0&&(B=i.TEXTURE0+$-1),q!==B&&(i.activeTexture(B),q=B)}function on(B,ot,it){it===void 0&&(q===null?it=i.TEXTURE0+$-1:it=q);let Tt=et[it];Tt===void 0&&(Tt={type:void 0,texture:void 0},et[it]=Tt),(Tt.type!==B||Tt.texture!==ot)&&(q!==it&&(i.activeTexture(it),q=it),i.bindTexture(B,ot||pt[B]),Tt.type=B,Tt.texture=ot)}function k(){let B=et[q];B!==void 0&&B.type!==void 0&&(i.bindTexture(B.type,null),B.type=void 0,B.texture=void 0)}function Pt(){try{i.compressedTexImage2D(...arguments)}catch(B){ee("WebGLState:",B)}}function Zt(){try{i.compressedTexImage3D(...arguments)}catch(B){ee("WebGLState:",B)}}function ae(){try{i.texSubImage2D(...arguments)}catch(B){ee("WebGLState:",B)}}function Et(){try{i.texSubImage3D(...arguments)}catch(B){ee("WebGLState:",B)}}function Ne(){try{i.compressedTexSubImage2D(...arguments)}catch(B){ee("WebGLState:",B)}}function Gt(){try{i.compressedTexSubImage3D(...arguments)}catch(B){ee("WebGLState:",B)}}function qt(){try{i.texStorage2D(...arguments)}catch(B){ee("WebGLState:",B)}}function L(){try{i.texStorage3D(...arguments)}catch(B){ee("WebGLState:",B)}}function S(){try{i.texImage2D(...arguments)}catch(B){ee("WebGLState:",B)}}function Y(){try{i.texImage3D(...arguments)}catch(B){ee("WebGLState:",B)}}function ft(B){return u[B]!==void 0?u[B]:i.getParameter(B)}function at(B,ot){u[B]!==ot&&(i.pixelStorei(B,ot),u[B]=ot)}function Mt(B){K.equals(B)===!1&&(i.scissor(B.x,B.y,B.z,B.w),K.copy(B))}function bt(B){gt.equals(B)===!1&&(i.viewport(B.x,B.y,B.z,B.w),gt.copy(B))}function nt(B,ot){let it=c.get(ot);it===void 0&&(it=new WeakMap,c.set(ot,it));let Tt=it.get(B);Tt===void 0&&(Tt=i.getUniformBlockIndex(ot,B.name),i.uniformBlockBinding(ot,Tt,Tt),it.set(B,Tt))}function rt(B,ot,it){let vt=c.get(ot).get(B);l[vt]!==it&&(i.bindBufferBase(i.UNIFORM_BUFFER,vt,it),l[vt]=it)}function yt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},u={},q=null,et={},d={},l={},f=new WeakMap,g=[],x=null,p=!1,m=null,y=null,A=null,M=null,R=null,w=null,_=null,b=new oe(0,0,0),F=0,I=!1,C=null,V=null,U=null,P=null,z=null,K.set(0,0,i.canvas.width,i.canvas.height),gt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:xt,disable:Ht,bindFramebuffer:jt,drawBuffers:Vt,useProgram:de,setBlending:Xe,setMaterial:Oe,setFlipSided:rn,setCullFace:Le,setLineWidth:vn,setPolygonOffset:Me,setScissorTest:fn,activeTexture:Ze,bindTexture:on,unbindTexture:k,compressedTexImage2D:Pt,compressedTexImage3D:Zt,texImage2D:S,texImage3D:Y,pixelStorei:at,getParameter:ft,updateUBOMapping:nt,uniformBlockBinding:rt,texStorage2D:qt,texStorage3D:L,texSubImage2D:ae,texSubImage3D:Et,compressedTexSubImage2D:Ne,compressedTexSubImage3D:Gt,scissor:Mt,viewport:bt,reset:yt}}function QS(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new ne,h=new WeakMap,u=new Set,d,f=new WeakMap,g=new Set,x=new FinalizationRegistry(L=>g.delete(L)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(L,S){return p?new OffscreenCanvas(L,S):Ho("canvas")}function y(L,S,Y){let ft=1,at=qt(L);if((at.width>Y||at.height>Y)&&(ft=Y/Math.max(at.width,at.height)),ft<1)if(typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&L instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&L instanceof ImageBitmap||typeof VideoFrame<"u"&&L instanceof VideoFrame){let Mt=Math.floor(ft*at.width),bt=Math.floor(ft*at.height);d===void 0&&(d=m(Mt,bt));let nt=S?m(Mt,bt):d;return nt.width=Mt,nt.height=bt,nt.getContext("2d").drawImage(L,0,0,Mt,bt),Yt("WebGLRenderer: Texture has been resized from ("+at.width+"x"+at.height+") to ("+Mt+"x"+bt+")."),nt}else return"data"in L&&Yt("WebGLRenderer: Image in DataTexture is too big ("+at.width+"x"+at.height+")."),L;return L}function A(L){return L.generateMipmaps}function M(L){i.generateMipmap(L)}function R(L){return L.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:L.isWebGL3DRenderTarget?i.TEXTURE_3D:L.isWebGLArrayRenderTarget||L.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(L,S,Y,ft,at,Mt=!1){if(L!==null){if(i[L]!==void 0)return i[L];Yt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+L+"'")}let bt;ft&&(bt=t.get("EXT_texture_norm16"),bt||Yt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let nt=S;if(S===i.RED&&(Y===i.FLOAT&&(nt=i.R32F),Y===i.HALF_FLOAT&&(nt=i.R16F),Y===i.UNSIGNED_BYTE&&(nt=i.R8),Y===i.UNSIGNED_SHORT&&bt&&(nt=bt.R16_EXT),Y===i.SHORT&&bt&&(nt=bt.R16_SNORM_EXT)),S===i.RED_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.R8UI),Y===i.UNSIGNED_SHORT&&(nt=i.R16UI),Y===i.UNSIGNED_INT&&(nt=i.R32UI),Y===i.BYTE&&(nt=i.R8I),Y===i.SHORT&&(nt=i.R16I),Y===i.INT&&(nt=i.R32I)),S===i.RG&&(Y===i.FLOAT&&(nt=i.RG32F),Y===i.HALF_FLOAT&&(nt=i.RG16F),Y===i.UNSIGNED_BYTE&&(nt=i.RG8),Y===i.UNSIGNED_SHORT&&bt&&(nt=bt.RG16_EXT),Y===i.SHORT&&bt&&(nt=bt.RG16_SNORM_EXT)),S===i.RG_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RG8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RG16UI),Y===i.UNSIGNED_INT&&(nt=i.RG32UI),Y===i.BYTE&&(nt=i.RG8I),Y===i.SHORT&&(nt=i.RG16I),Y===i.INT&&(nt=i.RG32I)),S===i.RGB_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGB8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGB16UI),Y===i.UNSIGNED_INT&&(nt=i.RGB32UI),Y===i.BYTE&&(nt=i.RGB8I),Y===i.SHORT&&(nt=i.RGB16I),Y===i.INT&&(nt=i.RGB32I)),S===i.RGBA_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGBA8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGBA16UI),Y===i.UNSIGNED_INT&&(nt=i.RGBA32UI),Y===i.BYTE&&(nt=i.RGBA8I),Y===i.SHORT&&(nt=i.RGBA16I),Y===i.INT&&(nt=i.RGBA32I)),S===i.RGB&&(Y===i.UNSIGNED_SHORT&&bt&&(nt=bt.RGB16_EXT),Y===i.SHORT&&bt&&(nt=bt.RGB16_SNORM_EXT),Y===i.UNSIGNED_INT_5_9_9_9_REV&&(nt=i.RGB9_E5),Y===i.UNSIGNED_INT_10F_11F_11F_REV&&(nt=i.R11F_G11F_B10F)),S===i.RGBA){let rt=Mt?Go:ve.getTransfer(at);Y===i.FLOAT&&(nt=i.RGBA32F),Y===i.HALF_FLOAT&&(nt=i.RGBA16F),Y===i.UNSIGNED_BYTE&&(nt=rt===Re?i.SRGB8_ALPHA8:i.RGBA8),Y===i.UNSIGNED_SHORT&&bt&&(nt=bt.RGBA16_EXT),Y===i.SHORT&&bt&&(nt=bt.RGBA16_SNORM_EXT),Y===i.UNSIGNED_SHORT_4_4_4_4&&(nt=i.RGBA4),Y===i.UNSIGNED_SHORT_5_5_5_1&&(nt=i.RGB5_A1)}return(nt===i.R16F||nt===i.R32F||nt===i.RG16F||nt===i.RG32F||nt===i.RGBA16F||nt===i.RGBA32F)&&t.get("EXT_color_buffer_float"),nt}function _(L,S){let Y;return L?S===null||S===Ii||S===lr?Y=i.DEPTH24_STENCIL8:S===Li?Y=i.DEPTH32F_STENCIL8:S===lo&&(Y=i.DEPTH24_STENCIL8,Yt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):S===null||S===Ii||S===lr?Y=i.DEPTH_COMPONENT24:S===Li?Y=i.DEPTH_COMPONENT32F:S===lo&&(Y=i.DEPTH_COMPONENT16),Y}function b(L,S){return A(L)===!0||L.isFramebufferTexture&&L.minFilter!==An&&L.minFilter!==qn?Math.log2(Math.max(S.width,S.height))+1:L.mipmaps.length>0?L.mipmaps.length:L.isCompressedTexture&&Array.isArray(L.image)?S.mipmaps.length:1}function F(L){let S=new WeakRef(L);n.get(L).__ref=S,g.add(S),x.register(L,S,S)}function I(L){let S=n.get(L).__ref;S!==void 0&&(g.delete(S),x.unregister(S))}function C(L){U(L.target)}function V(L){P(L.target)}function U(L){L.removeEventListener("dispose",C),I(L),$(L),L.isVideoTexture&&h.delete(L),L.isHTMLTexture&&u.delete(L)}function P(L){L.removeEventListener("dispose",V),I(L),st(L)}function z(){for(let L of g){let S=L.deref();S!==void 0&&(S.isRenderTarget===!0?P(S):U(S))}g.clear(),u.clear()}function $(L){let S=n.get(L);if(S.__webglInit===void 0)return;let Y=L.source,ft=f.get(Y);if(ft){let at=ft[S.__cacheKey];at.usedTimes--,at.usedTimes===0&&O(L),Object.keys(ft).length===0&&f.delete(Y)}n.remove(L)}function O(L){let S=n.get(L);i.deleteTexture(S.__webglTexture);let Y=L.source,ft=f.get(Y);delete ft[S.__cacheKey],o.memory.textures--}function st(L){let S=n.get(L);S.__depthDisposeCallback&&S.__depthDisposeCallback();let Y=L.depthTexture;if(Y&&Y.renderTarget===L&&U(Y),L.isWebGLCubeRenderTarget)for(let at=0;at<6;at++){if(Array.isArray(S.__webglFramebuffer[at]))for(let Mt=0;Mt<S.__webglFramebuffer[at].length;Mt++)i.deleteFramebuffer(S.__webglFramebuffer[at][Mt]);else i.deleteFramebuffer(S.__webglFramebuffer[at]);S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer[at])}else{if(Array.isArray(S.__webglFramebuffer))for(let at=0;at<S.__webglFramebuffer.length;at++)i.deleteFramebuffer(S.__webglFramebuffer[at]);else i.deleteFramebuffer(S.__webglFramebuffer);if(S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer),S.__webglMultisampledFramebuffer&&i.deleteFramebuffer(S.__webglMultisampledFramebuffer),S.__webglColorRenderbuffer)for(let at=0;at<S.__webglColorRenderbuffer.length;at++)S.__webglColorRenderbuffer[at]&&i.deleteRenderbuffer(S.__webglColorRenderbuffer[at]);S.__webglDepthRenderbuffer&&i.deleteRenderbuffer(S.__webglDepthRenderbuffer)}let ft=L.textures;for(let at=0,Mt=ft.length;at<Mt;at++){let bt=n.get(ft[at]);bt.__webglTexture&&(i.deleteTexture(bt.__webglTexture),o.memory.textures--),n.remove(ft[at])}n.remove(L)}let W=0;function q(){W=0}function et(){return W}function ht(L){W=L}function ut(){let L=W;return L>=s.maxTextures&&Yt("WebGLTextures: Trying to use "+(L+1)+" texture units while this GPU supports only "+s.maxTextures),W+=1,L}function K(L){let S=[];return S.push(L.wrapS),S.push(L.wrapT),S.push(L.wrapR||0),S.push(L.magFilter),S.push(L.minFilter),S.push(L.anisotropy),S.push(L.internalFormat),S.push(L.format),S.push(L.type),S.push(L.generateMipmaps),S.push(L.mipmapsAutoUpdate),S.push(L.premultiplyAlpha),S.push(L.flipY),S.push(L.unpackAlignment),S.push(L.colorSpace),S.join()}function gt(L,S){let Y=n.get(L);if(L.isVideoTexture&&Ne(L),L.isRenderTargetTexture===!1&&L.isExternalTexture!==!0&&L.version>0&&Y.__version!==L.version){let ft=L.image;if(ft===null)Yt("WebGLRenderer: Texture marked for update but no image data found.");else if(ft.complete===!1)Yt("WebGLRenderer: Texture marked for update but image is incomplete");else{Oe(Y,L,S);return}}else L.isExternalTexture&&(Y.__webglTexture=L.sourceTexture?L.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,Y.__webglTexture,i.TEXTURE0+S)}function lt(L,S){let Y=n.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&Y.__version!==L.version){Oe(Y,L,S);return}else L.isExternalTexture&&(Y.__webglTexture=L.sourceTexture?L.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,Y.__webglTexture,i.TEXTURE0+S)}function pt(L,S){let Y=n.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&Y.__version!==L.version){Oe(Y,L,S);return}e.bindTexture(i.TEXTURE_3D,Y.__webglTexture,i.TEXTURE0+S)}function xt(L,S){let Y=n.get(L);if(L.version>0&&Y.__version!==L.version){rn(Y,L,S);return}e.bindTexture(i.TEXTURE_CUBE_MAP,Y.__webglTexture,i.TEXTURE0+S)}let Ht={[Ll]:i.REPEAT,[Wi]:i.CLAMP_TO_EDGE,[Dl]:i.MIRRORED_REPEAT},jt={[An]:i.NEAREST,[Fm]:i.NEAREST_MIPMAP_NEAREST,[ha]:i.NEAREST_MIPMAP_LINEAR,[qn]:i.LINEAR,[oc]:i.LINEAR_MIPMAP_NEAREST,[fs]:i.LINEAR_MIPMAP_LINEAR},Vt={[zm]:i.NEVER,[Ku]:i.ALWAYS,[Vm]:i.LESS,[Ju]:i.LEQUAL,[Gm]:i.EQUAL,[ju]:i.GEQUAL,[Hm]:i.GREATER,[Wm]:i.NOTEQUAL};function de(L,S){if(S.type===Li&&t.has("OES_texture_float_linear")===!1&&(S.magFilter===qn||S.magFilter===oc||S.magFilter===ha||S.magFilter===fs||S.minFilter===qn||S.minFilter===oc||S.minFilter===ha||S.minFilter===fs)&&Yt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(L,i.TEXTURE_WRAP_S,Ht[S.wrapS]),i.texParameteri(L,i.TEXTURE_WRAP_T,Ht[S.wrapT]),(L===i.TEXTURE_3D||L===i.TEXTURE_2D_ARRAY)&&i.texParameteri(L,i.TEXTURE_WRAP_R,Ht[S.wrapR]),i.texParameteri(L,i.TEXTURE_MAG_FILTER,jt[S.magFilter]),i.texParameteri(L,i.TEXTURE_MIN_FILTER,jt[S.minFilter]),S.compareFunction&&(i.texParameteri(L,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(L,i.TEXTURE_COMPARE_FUNC,Vt[S.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(S.magFilter===An||S.minFilter!==ha&&S.minFilter!==fs||S.type===Li&&t.has("OES_texture_float_linear")===!1)return;if(S.anisotropy>1||n.get(S).__currentAnisotropy){let Y=t.get("EXT_texture_filter_anisotropic");i.texParameterf(L,Y.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(S.anisotropy,s.getMaxAnisotropy())),n.get(S).__currentAnisotropy=S.anisotropy}}}function ce(L,S){let Y=!1;L.__webglInit===void 0&&(L.__webglInit=!0,S.addEventListener("dispose",C),F(S));let ft=S.source,at=f.get(ft);at===void 0&&(at={},f.set(ft,at));let Mt=K(S);if(Mt!==L.__cacheKey){at[Mt]===void 0&&(at[Mt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,Y=!0),at[Mt].usedTimes++;let bt=at[L.__cacheKey];bt!==void 0&&(at[L.__cacheKey].usedTimes--,bt.usedTimes===0&&O(S)),L.__cacheKey=Mt,L.__webglTexture=at[Mt].texture}return Y}function se(L,S,Y){return Math.floor(Math.floor(L/Y)/S)}function Xe(L,S,Y,ft){let Mt=L.updateRanges;if(Mt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,S.width,S.height,Y,ft,S.data);else{Mt.sort((B,ot)=>B.start-ot.start);let bt=0;for(let B=1;B<Mt.length;B++){let ot=Mt[bt],it=Mt[B],Tt=ot.start+ot.count,vt=se(it.start,S.width,4),wt=se(ot.start,S.width,4);it.start<=Tt+1&&vt===wt&&se(it.start+it.count-1,S.width,4)===vt?ot.count=Math.max(ot.count,it.start+it.count-ot.start):(++bt,Mt[bt]=it)}Mt.length=bt+1;let nt=e.getParameter(i.UNPACK_ROW_LENGTH),rt=e.getParameter(i.UNPACK_SKIP_PIXELS),yt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,S.width);for(let B=0,ot=Mt.length;B<ot;B++){let it=Mt[B],Tt=Math.floor(it.start/4),vt=Math.ceil(it.count/4),wt=Tt%S.width,Wt=Math.floor(Tt/S.width),Kt=vt,dt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,wt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Wt),e.texSubImage2D(i.TEXTURE_2D,0,wt,Wt,Kt,dt,Y,ft,S.data)}L.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,nt),e.pixelStorei(i.UNPACK_SKIP_PIXELS,rt),e.pixelStorei(i.UNPACK_SKIP_ROWS,yt)}}function Oe(L,S,Y){let ft=i.TEXTURE_2D;(S.isDataArrayTexture||S.isCompressedArrayTexture)&&(ft=i.TEXTURE_2D_ARRAY),S.isData3DTexture&&(ft=i.TEXTURE_3D);let at=ce(L,S),Mt=S.source;e.bindTexture(ft,L.__webglTexture,i.TEXTURE0+Y);let bt=n.get(Mt);if(Mt.version!==bt.__version||at===!0){if(e.activeTexture(i.TEXTURE0+Y),(typeof ImageBitmap<"u"&&S.image instanceof ImageBitmap)===!1){let dt=ve.getPrimaries(ve.workingColorSpace),Bt=S.colorSpace===ms?null:ve.getPrimaries(S.colorSpace),Qt=S.colorSpace===ms||dt===Bt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,Qt)}e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment);let rt=y(S.image,!1,s.maxTextureSize);rt=Gt(S,rt);let yt=r.convert(S.format,S.colorSpace),B=r.convert(S.type),ot=w(S.internalFormat,yt,B,S.normalized,S.colorSpace,S.isVideoTexture);de(ft,S);let it,Tt=S.mipmaps,vt=S.isVideoTexture!==!0,wt=bt.__version===void 0||at===!0,Wt=Mt.dataReady,Kt=b(S,rt);if(S.isDepthTexture)ot=_(S.format===ps,S.type),wt&&(vt?e.texStorage2D(i.TEXTURE_2D,1,ot,rt.width,rt.height):e.texImage2D(i.TEXTURE_2D,0,ot,rt.width,rt.height,0,yt,B,null));else if(S.isDataTexture)if(Tt.length>0){vt&&wt&&e.texStorage2D(i.TEXTURE_2D,Kt,ot,Tt[0].width,Tt[0].height);for(let dt=0,Bt=Tt.length;dt<Bt;dt++)it=Tt[dt],vt?Wt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,it.width,it.height,yt,B,it.data):e.texImage2D(i.TEXTURE_2D,dt,ot,it.width,it.height,0,yt,B,it.data);S.generateMipmaps=!1}else vt?(wt&&e.texStorage2D(i.TEXTURE_2D,Kt,ot,rt.width,rt.height),Wt&&Xe(S,rt,yt,B)):e.texImage2D(i.TEXTURE_2D,0,ot,rt.width,rt.height,0,yt,B,rt.data);else if(S.isCompressedTexture)if(S.isCompressedArrayTexture){vt&&wt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Kt,ot,Tt[0].width,Tt[0].height,rt.depth);for(let dt=0,Bt=Tt.length;dt<Bt;dt++)if(it=Tt[dt],S.format!==Ni)if(yt!==null)if(vt){if(Wt)if(S.layerUpdates.size>0){let Qt=ld(it.width,it.height,S.format,S.type);for(let Ct of S.layerUpdates){let le=it.data.subarray(Ct*Qt/it.data.BYTES_PER_ELEMENT,(Ct+1)*Qt/it.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,Ct,it.width,it.height,1,yt,le)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,it.width,it.height,rt.depth,yt,it.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,dt,ot,it.width,it.height,rt.depth,0,it.data,0,0);else Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else vt?Wt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,it.width,it.height,rt.depth,yt,B,it.data):e.texImage3D(i.TEXTURE_2D_ARRAY,dt,ot,it.width,it.height,rt.depth,0,yt,B,it.data);S.layerUpdates.size>0&&S.clearLayerUpdates()}else{vt&&wt&&e.texStorage2D(i.TEXTURE_2D,Kt,ot,Tt[0].width,Tt[0].height);for(let dt=0,Bt=Tt.length;dt<Bt;dt++)it=Tt[dt],S.format!==Ni?yt!==null?vt?Wt&&e.compressedTexSubImage2D(i.TEXTURE_2D,dt,0,0,it.width,it.height,yt,it.data):e.compressedTexImage2D(i.TEXTURE_2D,dt,ot,it.width,it.height,0,it.data):Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):vt?Wt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,it.width,it.height,yt,B,it.data):e.texImage2D(i.TEXTURE_2D,dt,ot,it.width,it.height,0,yt,B,it.data)}else if(S.isDataArrayTexture)if(vt){if(wt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Kt,ot,rt.width,rt.height,rt.depth),Wt)if(S.layerUpdates.size>0){let dt=ld(rt.width,rt.height,S.format,S.type);for(let Bt of S.layerUpdates){let Qt=rt.data.subarray(Bt*dt/rt.data.BYTES_PER_ELEMENT,(Bt+1)*dt/rt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Bt,rt.width,rt.height,1,yt,B,Qt)}S.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,rt.width,rt.height,rt.depth,yt,B,rt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,ot,rt.width,rt.height,rt.depth,0,yt,B,rt.data);else if(S.isData3DTexture)vt?(wt&&e.texStorage3D(i.TEXTURE_3D,Kt,ot,rt.width,rt.height,rt.depth),Wt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,rt.width,rt.height,rt.depth,yt,B,rt.data)):e.texImage3D(i.TEXTURE_3D,0,ot,rt.width,rt.height,rt.depth,0,yt,B,rt.data);else if(S.isFramebufferTexture){if(wt)if(vt)e.texStorage2D(i.TEXTURE_2D,Kt,ot,rt.width,rt.height);else{let dt=rt.width,Bt=rt.height;for(let Qt=0;Qt<Kt;Qt++)e.texImage2D(i.TEXTURE_2D,Qt,ot,dt,Bt,0,yt,B,null),dt>>=1,Bt>>=1}}else if(S.isHTMLTexture){if("texElementImage2D"in i){let dt=i.canvas;if(dt.hasAttribute("layoutsubtree")||dt.setAttribute("layoutsubtree","true"),rt.parentNode!==dt){dt.appendChild(rt),u.add(S),dt.onpaint=Bt=>{let Qt=Bt.changedElements;for(let Ct of u)Qt.includes(Ct.image)&&(Ct.needsUpdate=!0)},dt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,rt);else{let Qt=i.RGBA,Ct=i.RGBA,le=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,Qt,Ct,le,rt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Tt.length>0){if(vt&&wt){let dt=qt(Tt[0]);e.texStorage2D(i.TEXTURE_2D,Kt,ot,dt.width,dt.height)}for(let dt=0,Bt=Tt.length;dt<Bt;dt++)it=Tt[dt],vt?Wt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,yt,B,it):e.texImage2D(i.TEXTURE_2D,dt,ot,yt,B,it);S.generateMipmaps=!1}else if(vt){if(wt){let dt=qt(rt);e.texStorage2D(i.TEXTURE_2D,Kt,ot,dt.width,dt.height)}Wt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,yt,B,rt)}else e.texImage2D(i.TEXTURE_2D,0,ot,yt,B,rt);A(S)&&S.mipmapsAutoUpdate===!0&&M(ft),bt.__version=Mt.version,S.onUpdate&&S.onUpdate(S)}L.__version=S.version}function rn(L,S,Y){if(S.image.length!==6)return;let ft=ce(L,S),at=S.source;e.bindTexture(i.TEXTURE_CUBE_MAP,L.__webglTexture,i.TEXTURE0+Y);let Mt=n.get(at);if(at.version!==Mt.__version||ft===!0){e.activeTexture(i.TEXTURE0+Y);let bt=ve.getPrimaries(ve.workingColorSpace),nt=S.colorSpace===ms?null:ve.getPrimaries(S.colorSpace),rt=S.colorSpace===ms||bt===nt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,rt);let yt=S.isCompressedTexture||S.image[0].isCompressedTexture,B=S.image[0]&&S.image[0].isDataTexture,ot=[];for(let Ct=0;Ct<6;Ct++)!yt&&!B?ot[Ct]=y(S.image[Ct],!0,s.maxCubemapSize):ot[Ct]=B?S.image[Ct].image:S.image[Ct],ot[Ct]=Gt(S,ot[Ct]);let it=ot[0],Tt=r.convert(S.format,S.colorSpace),vt=r.convert(S.type),wt=w(S.internalFormat,Tt,vt,S.normalized,S.colorSpace),Wt=S.isVideoTexture!==!0,Kt=Mt.__version===void 0||ft===!0,dt=at.dataReady,Bt=b(S,it);de(i.TEXTURE_CUBE_MAP,S);let Qt;if(S.isDepthTexture){if(wt=_(S.format===ps,S.type),Kt)if(Wt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,wt,it.width,it.height);else for(let Ct=0;Ct<6;Ct++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,wt,it.width,it.height,0,Tt,vt,null)}else if(yt){Wt&&Kt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Bt,wt,it.width,it.height);for(let Ct=0;Ct<6;Ct++){Qt=ot[Ct].mipmaps;for(let le=0;le<Qt.length;le++){let Be=Qt[le];S.format!==Ni?Tt!==null?Wt?dt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,0,0,Be.width,Be.height,Tt,Be.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,wt,Be.width,Be.height,0,Be.data):Yt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Wt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,0,0,Be.width,Be.height,Tt,vt,Be.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le,wt,Be.width,Be.height,0,Tt,vt,Be.data)}}}else{if(Qt=S.mipmaps,Wt&&Kt){Qt.length>0&&Bt++;let Ct=qt(ot[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Bt,wt,Ct.width,Ct.height)}for(let Ct=0;Ct<6;Ct++)if(B){Wt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,0,0,ot[Ct].width,ot[Ct].height,Tt,vt,ot[Ct].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,wt,ot[Ct].width,ot[Ct].height,0,Tt,vt,ot[Ct].data);for(let le=0;le<Qt.length;le++){let kn=Qt[le].image[Ct].image;Wt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,0,0,kn.width,kn.height,Tt,vt,kn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,wt,kn.width,kn.height,0,Tt,vt,kn.data)}}else{Wt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,0,0,Tt,vt,ot[Ct]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,0,wt,Tt,vt,ot[Ct]);for(let le=0;le<Qt.length;le++){let Be=Qt[le];Wt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,0,0,Tt,vt,Be.image[Ct]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ct,le+1,wt,Tt,vt,Be.image[Ct])}}}A(S)&&S.mipmapsAutoUpdate===!0&&M(i.TEXTURE_CUBE_MAP),Mt.__version=at.version,S.onUpdate&&S.onUpdate(S)}L.__version=S.version}function Le(L,S,Y,ft,at,Mt){let bt=r.convert(Y.format,Y.colorSpace),nt=r.convert(Y.type),rt=w(Y.internalFormat,bt,nt,Y.normalized,Y.colorSpace),yt=n.get(S),B=n.get(Y);if(B.__renderTarget=S,!yt.__hasExternalTextures){let ot=Math.max(1,S.width>>Mt),it=Math.max(1,S.height>>Mt);at===i.TEXTURE_3D||at===i.TEXTURE_2D_ARRAY?e.texImage3D(at,Mt,rt,ot,it,S.depth,0,bt,nt,null):e.texImage2D(at,Mt,rt,ot,it,0,bt,nt,null)}e.bindFramebuffer(i.FRAMEBUFFER,L),Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ft,at,B.__webglTexture,0,ae(S)):(at===i.TEXTURE_2D||at>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&at<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,ft,at,B.__webglTexture,Mt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function vn(L,S,Y){if(i.bindRenderbuffer(i.RENDERBUFFER,L),S.depthBuffer){let ft=S.depthTexture,at=ft&&ft.isDepthTexture?ft.type:null,Mt=_(S.stencilBuffer,at),bt=S.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;Et(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ae(S),Mt,S.width,S.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ae(S),Mt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,Mt,S.width,S.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,bt,i.RENDERBUFFER,L)}else{let ft=S.textures;for(let at=0;at<ft.length;at++){let Mt=ft[at],bt=r.convert(Mt.format,Mt.colorSpace),nt=r.convert(Mt.type),rt=w(Mt.internalFormat,bt,nt,Mt.normalized,Mt.colorSpace);Et(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ae(S),rt,S.width,S.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ae(S),rt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,rt,S.width,S.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Me(L,S,Y){let ft=S.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,L),!(S.depthTexture&&S.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let at=n.get(S.depthTexture);at.__renderTarget=S;let Mt=ft?S.depthTexture.image[0]:S.depthTexture.image;(!at.__webglTexture||Mt.width!==S.width||Mt.height!==S.height)&&(Mt.width=S.width,Mt.height=S.height,S.depthTexture.needsUpdate=!0),ft?xt(S.depthTexture,0):gt(S.depthTexture,0);let bt=at.__webglTexture,nt=ae(S),rt=ft?i.TEXTURE_CUBE_MAP_POSITIVE_X+Y:i.TEXTURE_2D,yt=S.depthTexture.format===ps?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(S.depthTexture.format===ls)Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,bt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,bt,0);else if(S.depthTexture.format===ps)Et(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,bt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,bt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function fn(L){let S=n.get(L),Y=L.isWebGLCubeRenderTarget===!0;if(S.__boundDepthTexture!==L.depthTexture){let ft=L.depthTexture;if(S.__depthDisposeCallback&&S.__depthDisposeCallback(),ft){let at=()=>{delete S.__boundDepthTexture,delete S.__depthDisposeCallback,ft.removeEventListener("dispose",at)};ft.addEventListener("dispose",at),S.__depthDisposeCallback=at}S.__boundDepthTexture=ft}if(L.depthTexture&&!S.__autoAllocateDepthBuffer)if(Y)for(let ft=0;ft<6;ft++)Me(S.__webglFramebuffer[ft],L,ft);else L.texture.mipmaps.length>0?Me(S.__webglFramebuffer[0],L,0):Me(S.__webglFramebuffer,L,0);else if(Y){S.__webglDepthbuffer=[];for(let ft=0;ft<6;ft++)if(e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[ft]),S.__webglDepthbuffer[ft]===void 0)S.__webglDepthbuffer[ft]=i.createRenderbuffer(),vn(S.__webglDepthbuffer[ft],L,!1);else{let at=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Mt=S.__webglDepthbuffer[ft];i.bindRenderbuffer(i.RENDERBUFFER,Mt),i.framebufferRenderbuffer(i.FRAMEBUFFER,at,i.RENDERBUFFER,Mt)}}else if(L.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer),S.__webglDepthbuffer===void 0)S.__webglDepthbuffer=i.createRenderbuffer(),vn(S.__webglDepthbuffer,L,!1);else{let at=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Mt=S.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,Mt),i.framebufferRenderbuffer(i.FRAMEBUFFER,at,i.RENDERBUFFER,Mt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Ze(L,S,Y){let ft=n.get(L);S!==void 0&&Le(ft.__webglFramebuffer,L,L.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),Y!==void 0&&fn(L)}function on(L){let S=L.texture,Y=n.get(L),ft=n.get(S);L.addEventListener("dispose",V),F(L);let at=L.textures,Mt=L.isWebGLCubeRenderTarget===!0,bt=at.length>1;if(bt||(ft.__webglTexture===void 0&&(ft.__webglTexture=i.createTexture()),ft.__version=S.version,o.memory.textures++),Mt){Y.__webglFramebuffer=[];for(let nt=0;nt<6;nt++)if(S.mipmaps.length>0){Y.__webglFramebuffer[nt]=[];for(let rt=0;rt<S.mipmaps.length;rt++)Y.__webglFramebuffer[nt][rt]=i.createFramebuffer()}else Y.__webglFramebuffer[nt]=i.createFramebuffer()}else{if(S.mipmaps.length>0){Y.__webglFramebuffer=[];for(let nt=0;nt<S.mipmaps.length;nt++)Y.__webglFramebuffer[nt]=i.createFramebuffer()}else Y.__webglFramebuffer=i.createFramebuffer();if(bt)for(let nt=0,rt=at.length;nt<rt;nt++){let yt=n.get(at[nt]);yt.__webglTexture===void 0&&(yt.__webglTexture=i.createTexture(),o.memory.textures++)}if(L.samples>0&&Et(L)===!1){Y.__webglMultisampledFramebuffer=i.createFramebuffer(),Y.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,Y.__webglMultisampledFramebuffer);for(let nt=0;nt<at.length;nt++){let rt=at[nt];Y.__webglColorRenderbuffer[nt]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt]);let yt=r.convert(rt.format,rt.colorSpace),B=r.convert(rt.type),ot=w(rt.internalFormat,yt,B,rt.normalized,rt.colorSpace,L.isXRRenderTarget===!0),it=ae(L);i.renderbufferStorageMultisample(i.RENDERBUFFER,it,ot,L.width,L.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+nt,i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt])}i.bindRenderbuffer(i.RENDERBUFFER,null),L.depthBuffer&&(Y.__webglDepthRenderbuffer=i.createRenderbuffer(),vn(Y.__webglDepthRenderbuffer,L,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(Mt){e.bindTexture(i.TEXTURE_CUBE_MAP,ft.__webglTexture),de(i.TEXTURE_CUBE_MAP,S);for(let nt=0;nt<6;nt++)if(S.mipmaps.length>0)for(let rt=0;rt<S.mipmaps.length;rt++)Le(Y.__webglFramebuffer[nt][rt],L,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,rt);else Le(Y.__webglFramebuffer[nt],L,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,0);A(S)?M(i.TEXTURE_CUBE_MAP):S.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}else if(bt){for(let nt=0,rt=at.length;nt<rt;nt++){let yt=at[nt],B=n.get(yt),ot=i.TEXTURE_2D;(L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(ot=L.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(ot,B.__webglTexture),de(ot,yt),Le(Y.__webglFramebuffer,L,yt,i.COLOR_ATTACHMENT0+nt,ot,0),A(yt)&&M(ot)}e.unbindTexture()}else{let nt=i.TEXTURE_2D;if((L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(nt=L.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(nt,ft.__webglTexture),de(nt,S),S.mipmaps.length>0)for(let rt=0;rt<S.mipmaps.length;rt++)Le(Y.__webglFramebuffer[rt],L,S,i.COLOR_ATTACHMENT0,nt,rt);else Le(Y.__webglFramebuffer,L,S,i.COLOR_ATTACHMENT0,nt,0);A(S)?M(nt):S.mipmaps.length>0&&i.texParameteri(nt,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}L.depthBuffer&&fn(L)}function k(L){let S=L.textures;for(let Y=0,ft=S.length;Y<ft;Y++){let at=S[Y];if(A(at)&&at.mipmapsAutoUpdate===!0){let Mt=R(L),bt=n.get(at).__webglTexture;e.bindTexture(Mt,bt),M(Mt),e.unbindTexture()}}}let Pt=[];function Zt(L){if(L.samples>0){if(Et(L)===!1){let S=L.textures,Y=L.width,ft=L.height,at=i.COLOR_BUFFER_BIT,Mt=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,bt=n.get(L),nt=S.length>1;if(nt)for(let yt=0;yt<S.length;yt++)e.bindFramebuffer(i.FRAMEBUFFER,bt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,bt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,bt.__webglMultisampledFramebuffer),L.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,bt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,bt.__webglFramebuffer);for(let yt=0;yt<S.length;yt++){if(L.resolveDepthBuffer&&(L.depthBuffer&&(at|=i.DEPTH_BUFFER_BIT),L.stencilBuffer&&L.resolveStencilBuffer&&(at|=i.STENCIL_BUFFER_BIT)),nt){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,bt.__webglColorRenderbuffer[yt]);let B=n.get(S[yt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,B,0)}i.blitFramebuffer(0,0,Y,ft,0,0,Y,ft,at,i.NEAREST),l===!0&&(Pt.length=0,Pt.push(i.COLOR_ATTACHMENT0+yt),L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&Pt.push(Mt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,Pt))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),nt)for(let yt=0;yt<S.length;yt++){e.bindFramebuffer(i.FRAMEBUFFER,bt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,bt.__webglColorRenderbuffer[yt]);let B=n.get(S[yt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,bt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,B,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,bt.__webglMultisampledFramebuffer)}else if(L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&l){let S=L.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[S])}}}function ae(L){return Math.min(s.maxSamples,L.samples)}function Et(L){let S=n.get(L);return L.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&S.__useRenderToTexture!==!1}function Ne(L){let S=o.render.frame;h.get(L)!==S&&(h.set(L,S),L.update())}function Gt(L,S){let Y=L.colorSpace,ft=L.format,at=L.type;return L.isCompressedTexture===!0||L.isVideoTexture===!0||Y!==Vo&&Y!==ms&&(ve.getTransfer(Y)===Re?(ft!==Ni||at!==Jn)&&Yt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ee("WebGLTextures: Unsupported texture color space:",Y)),S}function qt(L){return typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement?(c.width=L.naturalWidth||L.width,c.height=L.naturalHeight||L.height):typeof VideoFrame<"u"&&L instanceof VideoFrame?(c.width=L.displayWidth,c.height=L.displayHeight):(c.width=L.width,c.height=L.height),c}this.allocateTextureUnit=ut,this.resetTextureUnits=q,this.getTextureUnits=et,this.setTextureUnits=ht,this.setTexture2D=gt,this.setTexture2DArray=lt,this.setTexture3D=pt,this.setTextureCube=xt,this.rebindTextures=Ze,this.setupRenderTarget=on,this.updateRenderTargetMipmap=k,this.updateMultisampleRenderTarget=Zt,this.setupDepthRenderbuffer=fn,this.setupFrameBufferTexture=Le,this.useMultisampledRTT=Et,this.dispose=z}function tw(i,t){function e(n,s=ms){let r,o=ve.getTransfer(s);if(n===Jn)return i.UNSIGNED_BYTE;if(n===lc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===cc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Xu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===$u)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Hu)return i.BYTE;if(n===Wu)return i.SHORT;if(n===lo)return i.UNSIGNED_SHORT;if(n===ac)return i.INT;if(n===Ii)return i.UNSIGNED_INT;if(n===Li)return i.FLOAT;if(n===Di)return i.HALF_FLOAT;if(n===qu)return i.ALPHA;if(n===Yu)return i.RGB;if(n===Ni)return i.RGBA;if(n===ls)return i.DEPTH_COMPONENT;if(n===ps)return i.DEPTH_STENCIL;if(n===Zu)return i.RED;if(n===hc)return i.RED_INTEGER;if(n===zs)return i.RG;if(n===uc)return i.RG_INTEGER;if(n===dc)return i.RGBA_INTEGER;if(n===ua||n===da||n===fa||n===pa)if(o===Re)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===ua)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===da)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===fa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===pa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===ua)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===da)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===fa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===pa)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===fc||n===pc||n===mc||n===gc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===fc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===pc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===mc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===gc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===_c||n===xc||n===yc||n===vc||n===Mc||n===ma||n===bc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===_c||n===xc)return o===Re?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===yc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===vc)return r.COMPRESSED_R11_EAC;if(n===Mc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===ma)return r.COMPRESSED_RG11_EAC;if(n===bc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Sc||n===wc||n===Ec||n===Tc||n===Ac||n===Rc||n===Cc||n===Pc||n===Ic||n===Lc||n===Dc||n===Nc||n===Uc||n===Fc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Sc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===wc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Ec)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Tc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Ac)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Rc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Cc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Pc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Ic)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Lc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Dc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Nc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Uc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Fc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Oc||n===Bc||n===kc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Oc)return o===Re?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Bc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===kc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===zc||n===Vc||n===ga||n===Gc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===zc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Vc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===ga)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Gc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===lr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var ew=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,nw=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,_d=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new Qo(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Xi({vertexShader:ew,fragmentShader:nw,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Rn(new sr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},xd=class extends Ci{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,u=null,d=null,f=null,g=null,x=typeof XRWebGLBinding<"u",p=new _d,m={},y=e.getContextAttributes(),A=null,M=null,R=[],w=[],_=new ne,b=null,F=null,I=new $n;I.viewport=new qe;let C=new $n;C.viewport=new qe;let V=[I,C],U=new nc,P=null,z=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(K){let gt=R[K];return gt===void 0&&(gt=new to,R[K]=gt),gt.getTargetRaySpace()},this.getControllerGrip=function(K){let gt=R[K];return gt===void 0&&(gt=new to,R[K]=gt),gt.getGripSpace()},this.getHand=function(K){let gt=R[K];return gt===void 0&&(gt=new to,R[K]=gt),gt.getHandSpace()};function $(K){let gt=w.indexOf(K.inputSource);if(gt===-1)return;let lt=R[gt];lt!==void 0&&(lt.update(K.inputSource,K.frame,c||o),lt.dispatchEvent({type:K.type,data:K.inputSource}))}function O(){s.removeEventListener("select",$),s.removeEventListener("selectstart",$),s.removeEventListener("selectend",$),s.removeEventListener("squeeze",$),s.removeEventListener("squeezestart",$),s.removeEventListener("squeezeend",$),s.removeEventListener("end",O),s.removeEventListener("inputsourceschange",st);for(let K=0;K<R.length;K++){let gt=w[K];gt!==null&&(w[K]=null,R[K].disconnect(gt))}P=null,z=null,p.reset();for(let K in m)delete m[K];if(t.setRenderTarget(A),f=null,d=null,u=null,s=null,M=null,ut.stop(),n.isPresenting=!1,t.setPixelRatio(b),t.setSize(_.width,_.height,!1),F!==null){let K=F.camera;K.fov=F.fov,K.zoom=F.zoom,K.updateProjectionMatrix(),F=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(K){r=K,n.isPresenting===!0&&Yt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(K){a=K,n.isPresenting===!0&&Yt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(K){c=K},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return u===null&&x&&(u=new XRWebGLBinding(s,e)),u},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(K){if(s=K,s!==null){if(A=t.getRenderTarget(),s.addEventListener("select",$),s.addEventListener("selectstart",$),s.addEventListener("selectend",$),s.addEventListener("squeeze",$),s.addEventListener("squeezestart",$),s.addEventListener("squeezeend",$),s.addEventListener("end",O),s.addEventListener("inputsourceschange",st),y.xrCompatible!==!0&&await e.makeXRCompatible(),b=t.getPixelRatio(),t.getSize(_),x&&"createProjectionLayer"in XRWebGLBinding.prototype){let lt=null,pt=null,xt=null;y.depth&&(xt=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,lt=y.stencil?ps:ls,pt=y.stencil?lr:Ii);let Ht={colorFormat:e.RGBA8,depthFormat:xt,scaleFactor:r};u=this.getBinding(),d=u.createProjectionLayer(Ht),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),M=new hi(d.textureWidth,d.textureHeight,{format:Ni,type:Jn,depthTexture:new ds(d.textureWidth,d.textureHeight,pt,void 0,void 0,void 0,void 0,void 0,void 0,lt),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let lt={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,lt),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),M=new hi(f.framebufferWidth,f.framebufferHeight,{format:Ni,type:Jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}M.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),ut.setContext(s),ut.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function st(K){for(let gt=0;gt<K.removed.length;gt++){let lt=K.removed[gt],pt=w.indexOf(lt);pt>=0&&(w[pt]=null,R[pt].disconnect(lt))}for(let gt=0;gt<K.added.length;gt++){let lt=K.added[gt],pt=w.indexOf(lt);if(pt===-1){for(let Ht=0;Ht<R.length;Ht++)if(Ht>=w.length){w.push(lt),pt=Ht;break}else if(w[Ht]===null){w[Ht]=lt,pt=Ht;break}if(pt===-1)break}let xt=R[pt];xt&&xt.connect(lt)}}function W(K,gt){gt===null?K.matrixWorld.copy(K.matrix):K.matrixWorld.multiplyMatrices(gt.matrixWorld,K.matrix),K.matrixWorldInverse.copy(K.matrixWorld).invert()}this.updateCamera=function(K){if(s===null)return;let gt=K.near,lt=K.far;p.texture!==null&&(p.depthNear>0&&(gt=p.depthNear),p.depthFar>0&&(lt=p.depthFar)),U.near=C.near=I.near=gt,U.far=C.far=I.far=lt,(P!==U.near||z!==U.far)&&(s.updateRenderState({depthNear:U.near,depthFar:U.far}),P=U.near,z=U.far),U.layers.mask=K.layers.mask|6,I.layers.mask=U.layers.mask&-5,C.layers.mask=U.layers.mask&-3;let pt=K.parent,xt=U.cameras;W(U,pt);for(let Ht=0;Ht<xt.length;Ht++)W(xt[Ht],pt);U.projectionMatrix.copy(I.projectionMatrix),U.projectionMatrixInverse.copy(I.projectionMatrixInverse),F===null&&K.isPerspectiveCamera&&(F={camera:K,fov:K.fov,zoom:K.zoom}),q(K,U,pt)};function q(K,gt,lt){lt===null?K.matrix.copy(gt.matrixWorld):(K.matrix.copy(lt.matrixWorld),K.matrix.invert(),K.matrix.multiply(gt.matrixWorld)),K.matrix.decompose(K.position,K.quaternion,K.scale),K.updateMatrixWorld(!0),K.projectionMatrix.copy(gt.projectionMatrix),K.projectionMatrixInverse.copy(gt.projectionMatrixInverse),K.isPerspectiveCamera&&(K.fov=Kr*2*Math.atan(1/K.projectionMatrix.elements[5]),K.zoom=1)}this.getCamera=function(){return U},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function(K){l=K,d!==null&&(d.fixedFoveation=K),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=K)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(U)},this.getCameraTexture=function(K){return m[K]};let et=null;function ht(K,gt){if(h=gt.getViewerPose(c||o),g=gt,h!==null){let lt=h.views;f!==null&&(t.setRenderTargetFramebuffer(M,f.framebuffer),t.setRenderTarget(M));let pt=!1;lt.length!==U.cameras.length&&(U.cameras.length=0,pt=!0);for(let Vt=0;Vt<lt.length;Vt++){let de=lt[Vt],ce=null;if(f!==null)ce=f.getViewport(de);else{let Xe=u.getViewSubImage(d,de);ce=Xe.viewport,Vt===0&&(t.setRenderTargetTextures(M,Xe.colorTexture,Xe.depthStencilTexture),t.setRenderTarget(M))}let se=V[Vt];se===void 0&&(se=new $n,se.layers.enable(Vt),se.viewport=new qe,V[Vt]=se),se.matrix.fromArray(de.transform.matrix),se.matrix.decompose(se.position,se.quaternion,se.scale),se.projectionMatrix.fromArray(de.projectionMatrix),se.projectionMatrixInverse.copy(se.projectionMatrix).invert(),se.viewport.set(ce.x,ce.y,ce.width,ce.height),Vt===0&&(U.matrix.copy(se.matrix),U.matrix.decompose(U.position,U.quaternion,U.scale)),pt===!0&&U.cameras.push(se)}let xt=s.enabledFeatures;if(xt&&xt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&x){u=n.getBinding();let Vt=u.getDepthInformation(lt[0]);Vt&&Vt.isValid&&Vt.texture&&p.init(Vt,s.renderState)}if(xt&&xt.includes("camera-access")&&x){t.state.unbindTexture(),u=n.getBinding();for(let Vt=0;Vt<lt.length;Vt++){let de=lt[Vt].camera;if(de){let ce=m[de];ce||(ce=new Qo,m[de]=ce);let se=u.getCameraImage(de);ce.sourceTexture=se}}}}for(let lt=0;lt<R.length;lt++){let pt=w[lt],xt=R[lt];pt!==null&&xt!==void 0&&xt.update(pt,gt,c||o)}et&&et(K,gt),gt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:gt}),g=null}let ut=new Sg;ut.setAnimationLoop(ht),this.setAnimationLoop=function(K){et=K},this.dispose=function(){}}},iw=new We,Dg=new ie;Dg.set(-1,0,0,0,1,0,0,0,1);function sw(i,t){function e(p,m){p.matrixAutoUpdate===!0&&p.updateMatrix(),m.value.copy(p.matrix)}function n(p,m){m.color.getRGB(p.fogColor.value,rd(i)),m.isFog?(p.fogNear.value=m.near,p.fogFar.value=m.far):m.isFogExp2&&(p.fogDensity.value=m.density)}function s(p,m,y,A,M){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(p,m):m.isMeshLambertMaterial?(r(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(p,m),u(p,m)):m.isMeshPhongMaterial?(r(p,m),h(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(p,m),d(p,m),m.isMeshPhysicalMaterial&&f(p,m,M)):m.isMeshMatcapMaterial?(r(p,m),g(p,m)):m.isMeshDepthMaterial?r(p,m):m.isMeshDistanceMaterial?(r(p,m),x(p,m)):m.isMeshNormalMaterial?r(p,m):m.isLineBasicMaterial?(o(p,m),m.isLineDashedMaterial&&a(p,m)):m.isPointsMaterial?l(p,m,y,A):m.isSpriteMaterial?c(p,m):m.isShadowMaterial?(p.color.value.copy(m.color),p.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(p,m){p.opacity.value=m.opacity,m.color&&p.diffuse.value.copy(m.color),m.emissive&&p.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.bumpMap&&(p.bumpMap.value=m.bumpMap,e(m.bumpMap,p.bumpMapTransform),p.bumpScale.value=m.bumpScale,m.side===In&&(p.bumpScale.value*=-1)),m.normalMap&&(p.normalMap.value=m.normalMap,e(m.normalMap,p.normalMapTransform),p.normalScale.value.copy(m.normalScale),m.side===In&&p.normalScale.value.negate()),m.displacementMap&&(p.displacementMap.value=m.displacementMap,e(m.displacementMap,p.displacementMapTransform),p.displacementScale.value=m.displacementScale,p.displacementBias.value=m.displacementBias),m.emissiveMap&&(p.emissiveMap.value=m.emissiveMap,e(m.emissiveMap,p.emissiveMapTransform)),m.specularMap&&(p.specularMap.value=m.specularMap,e(m.specularMap,p.specularMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest);let y=t.get(m),A=y.envMap,M=y.envMapRotation;A&&(p.envMap.value=A,p.envMapRotation.value.setFromMatrix4(iw.makeRotationFromEuler(M)).transpose(),A.isCubeTexture&&A.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(Dg),p.reflectivity.value=m.reflectivity,p.ior.value=m.ior,p.refractionRatio.value=m.refractionRatio),m.lightMap&&(p.lightMap.value=m.lightMap,p.lightMapIntensity.value=m.lightMapIntensity,e(m.lightMap,p.lightMapTransform)),m.aoMap&&(p.aoMap.value=m.aoMap,p.aoMapIntensity.value=m.aoMapIntensity,e(m.aoMap,p.aoMapTransform))}function o(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform))}function a(p,m){p.dashSize.value=m.dashSize,p.totalSize.value=m.dashSize+m.gapSize,p.scale.value=m.scale}function l(p,m,y,A){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.size.value=m.size*y,p.scale.value=A*.5,m.map&&(p.map.value=m.map,e(m.map,p.uvTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function c(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.rotation.value=m.rotation,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function h(p,m){p.specular.value.copy(m.specular),p.shininess.value=Math.max(m.shininess,1e-4)}function u(p,m){m.gradientMap&&(p.gradientMap.value=m.gradientMap)}function d(p,m){p.metalness.value=m.metalness,m.metalnessMap&&(p.metalnessMap.value=m.metalnessMap,e(m.metalnessMap,p.metalnessMapTransform)),p.roughness.value=m.roughness,m.roughnessMap&&(p.roughnessMap.value=m.roughnessMap,e(m.roughnessMap,p.roughnessMapTransform)),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)}function f(p,m,y){p.ior.value=m.ior,m.diffuseRoughness>0&&(p.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=m.diffuseRoughnessMap,e(m.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),m.sheen>0&&(p.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),p.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(p.sheenColorMap.value=m.sheenColorMap,e(m.sheenColorMap,p.sheenColorMapTransform)),m.sheenRoughnessMap&&(p.sheenRoughnessMap.value=m.sheenRoughnessMap,e(m.sheenRoughnessMap,p.sheenRoughnessMapTransform))),m.clearcoat>0&&(p.clearcoat.value=m.clearcoat,p.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(p.clearcoatMap.value=m.clearcoatMap,e(m.clearcoatMap,p.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,e(m.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(p.clearcoatNormalMap.value=m.clearcoatNormalMap,e(m.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===In&&p.clearcoatNormalScale.value.negate())),m.dispersion>0&&(p.dispersion.value=m.dispersion),m.retroreflectivity>0&&(p.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(p.iridescence.value=m.iridescence,p.iridescenceIOR.value=m.iridescenceIOR,p.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(p.iridescenceMap.value=m.iridescenceMap,e(m.iridescenceMap,p.iridescenceMapTransform)),m.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=m.iridescenceThicknessMap,e(m.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),m.transmission>0&&(p.transmission.value=m.transmission,p.transmissionSamplerMap.value=y.texture,p.transmissionSamplerSize.value.set(y.width,y.height),m.transmissionMap&&(p.transmissionMap.value=m.transmissionMap,e(m.transmissionMap,p.transmissionMapTransform)),p.thickness.value=m.thickness,m.thicknessMap&&(p.thicknessMap.value=m.thicknessMap,e(m.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=m.attenuationDistance,p.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(p.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(p.anisotropyMap.value=m.anisotropyMap,e(m.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=m.specularIntensity,p.specularColor.value.copy(m.specularColor),m.specularColorMap&&(p.specularColorMap.value=m.specularColorMap,e(m.specularColorMap,p.specularColorMapTransform)),m.specularIntensityMap&&(p.specularIntensityMap.value=m.specularIntensityMap,e(m.specularIntensityMap,p.specularIntensityMapTransform))}function g(p,m){m.matcap&&(p.matcap.value=m.matcap)}function x(p,m){let y=t.get(m).light;p.referencePosition.value.setFromMatrixPosition(y.matrixWorld),p.nearDistance.value=y.shadow.camera.near,p.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function rw(i,t,e,n){let s={},r={};function o(y,A){let M=A.program;n.uniformBlockBinding(y,M,s[y.id])}function a(y,A){let M=s[y.id];M===void 0&&(g(y),M=l(y),s[y.id]=M,y.addEventListener("dispose",p));let R=A.program;n.updateUBOMapping(y,R);let w=t.render.frame;r[y.id]!==w&&(c(y),r[y.id]=w)}function l(y){let A=i.createBuffer(),M=y.__size,R=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,A),i.bufferData(i.UNIFORM_BUFFER,M,R),i.bindBuffer(i.UNIFORM_BUFFER,null),A}function c(y){let A=s[y.id],M=y.uniforms,R=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,A);for(let w=0,_=M.length;w<_;w++){let b=M[w];if(Array.isArray(b))for(let F=0,I=b.length;F<I;F++)h(b[F],w,F,R);else h(b,w,0,R)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(y,A,M,R){if(d(y,A,M,R)===!0){let w=y.__offset,_=y.value;if(Array.isArray(_)){let b=0;for(let F=0;F<_.length;F++){let I=_[F],C=x(I,!0);u(I,y.__data,b),b+=C.storage/Float32Array.BYTES_PER_ELEMENT}}else u(_,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,y.__data)}}function u(y,A,M){typeof y=="number"||typeof y=="boolean"?A[M]=y:y.isMatrix3?(A[M]=y.elements[0],A[M+1]=y.elements[1],A[M+2]=y.elements[2],A[M+3]=0,A[M+4]=y.elements[3],A[M+5]=y.elements[4],A[M+6]=y.elements[5],A[M+7]=0,A[M+8]=y.elements[6],A[M+9]=y.elements[7],A[M+10]=y.elements[8],A[M+11]=0):ArrayBuffer.isView(y)?A.set(y.subarray(0,A.length-M),M):y.toArray(A,M)}function d(y,A,M,R){let w=y.value,_=A+"_"+M;if(Array.isArray(w)){R[_]===void 0&&(R[_]=[]);let b=R[_],F=!1;for(let I=0;I<w.length;I++)f(w[I],b,I)===!0&&(F=!0);return F}return f(w,R,_)}function f(y,A,M){if(A[M]===void 0)return typeof y=="number"||typeof y=="boolean"?A[M]=y:ArrayBuffer.isView(y)?A[M]=y.slice():A[M]=y.clone(),!0;{let R=A[M];if(typeof y=="number"||typeof y=="boolean"){if(R!==y)return A[M]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(R.equals(y)===!1)return R.copy(y),!0}}return!1}function g(y){let A=y.uniforms,M=0,R=16;for(let _=0,b=A.length;_<b;_++){let F=Array.isArray(A[_])?A[_]:[A[_]];for(let I=0,C=F.length;I<C;I++){let V=F[I],U=Array.isArray(V.value)?V.value:[V.value],P=Array.isArray(A[_])||Array.isArray(V.value),z=M;for(let O=0,st=U.length;O<st;O++){let W=U[O],q=x(W,P),et=M%R,ht=et%q.boundary,ut=et+ht;M+=ht,ut!==0&&R-ut<q.storage&&(M+=R-ut),O===0&&(z=M),M+=q.storage}let $=V.type==="int"?Int32Array:V.type==="uint"?Uint32Array:Float32Array;V.__data=new $((M-z)/Float32Array.BYTES_PER_ELEMENT),V.__offset=z}}let w=M%R;return w>0&&(M+=R-w),y.__size=M,y.__cache={},this}function x(y,A){let M={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(M.boundary=4,M.storage=4):y.isVector2?(M.boundary=8,M.storage=8):y.isVector3||y.isColor?(M.boundary=16,M.storage=12):y.isVector4?(M.boundary=16,M.storage=16):y.isMatrix3?(M.boundary=16,M.storage=48):y.isMatrix4?(M.boundary=16,M.storage=64):y.isTexture?Yt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(M.boundary=16,M.storage=y.byteLength):Yt("WebGLRenderer: Unsupported uniform value type.",y),A===!0&&(M.boundary=16,M.storage=Math.ceil(M.storage/16)*16),M}function p(y){let A=y.target;A.removeEventListener("dispose",p),i.deleteBuffer(s[A.id]),delete s[A.id],delete r[A.id]}function m(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:m}}var ow=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),qi=null;function aw(){return qi===null&&(qi=new Bl(ow,16,16,zs,Di),qi.name="DFG_LUT",qi.minFilter=qn,qi.magFilter=qn,qi.wrapS=Wi,qi.wrapT=Wi,qi.generateMipmaps=!1,qi.needsUpdate=!0),qi}var qc=class{constructor(t={}){let{canvas:e=$m(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:u=!1,reversedDepthBuffer:d=!1,outputBufferType:f=Jn}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let x=f,p=new Set([dc,uc,hc]),m=new Set([Jn,Ii,lo,lr,lc,cc]),y=new Uint32Array(4),A=new Int32Array(4),M={textures:[],min:[],max:[],resolution:[]},R=null,w=null,_=[],b=[],F=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=$i,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let I=this,C=!1,V=null,U=null,P=null,z=null;this._outputColorSpace=li;let $=0,O=0,st=null,W=-1,q=null,et=new qe,ht=new qe,ut=null,K=new oe(0),gt=0,lt=e.width,pt=e.height,xt=1,Ht=null,jt=null,Vt=new qe(0,0,lt,pt),de=new qe(0,0,lt,pt),ce=!1,se=new Ds,Xe=new kl,Oe=!1,rn=!1,Le=new We,vn=new X,Me=new qe,fn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Ze=!1;function on(){return st===null?xt:1}let k=n;function Pt(T,G){return e.getContext(T,G)}let Zt,ae,Et,Ne,Gt,qt,L,S,Y,ft,at,Mt,bt,nt,rt,yt,B,ot,it,Tt,vt,wt,Wt;try{let T={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:u};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Bt,!1),e.addEventListener("webglcontextrestored",Qt,!1),e.addEventListener("webglcontextcreationerror",Ct,!1),k===null){let G="webgl2";if(k=Pt(G,T),k===null)throw Pt(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Kt()}catch(T){throw e.removeEventListener("webglcontextlost",Bt,!1),e.removeEventListener("webglcontextrestored",Qt,!1),e.removeEventListener("webglcontextcreationerror",Ct,!1),ee("WebGLRenderer: "+T.message),T}function Kt(){Zt=new xb(k),Zt.init(),vt=new tw(k,Zt),ae=new ab(k,Zt,t,vt),Et=new KS(k,Zt),ae.reversedDepthBuffer&&d&&Et.buffers.depth.setReversed(!0),U=k.createFramebuffer(),P=k.createFramebuffer(),z=k.createFramebuffer(),Ne=new Mb(k),Gt=new BS,qt=new QS(k,Zt,Et,Gt,ae,vt,Ne),L=new _b(I),S=new Sy(k),wt=new rb(k,S),Y=new yb(k,S,Ne,wt),ft=new Sb(k,Y,S,wt,Ne),ot=new bb(k,ae,qt),rt=new lb(Gt),at=new OS(I,L,Zt,ae,wt,rt),Mt=new sw(I,Gt),bt=new zS,nt=new $S(Zt),B=new sb(I,L,Et,ft,g,l),yt=new jS(I,ft,ae),Wt=new rw(k,Ne,ae,Et),it=new ob(k,Zt,Ne),Tt=new vb(k,Zt,Ne),Ne.programs=at.programs,I.capabilities=ae,I.extensions=Zt,I.properties=Gt,I.renderLists=bt,I.shadowMap=yt,I.state=Et,I.info=Ne}x!==Jn&&(F=new Eb(x,e.width,e.height,a,s,r));let dt=new xd(I,k);this.xr=dt,this.getContext=function(){return k},this.getContextAttributes=function(){return k.getContextAttributes()},this.forceContextLoss=function(){let T=Zt.get("WEBGL_lose_context");T&&T.loseContext()},this.forceContextRestore=function(){let T=Zt.get("WEBGL_lose_context");T&&T.restoreContext()},this.getPixelRatio=function(){return xt},this.setPixelRatio=function(T){T!==void 0&&(xt=T,this.setSize(lt,pt,!1))},this.getSize=function(T){return T.set(lt,pt)},this.setSize=function(T,G,tt=!0){if(dt.isPresenting){Yt("WebGLRenderer: Can't change size while VR device is presenting.");return}lt=T,pt=G,e.width=Math.floor(T*xt),e.height=Math.floor(G*xt),tt===!0&&(e.style.width=T+"px",e.style.height=G+"px"),F!==null&&F.setSize(e.width,e.height),this.setViewport(0,0,T,G)},this.getDrawingBufferSize=function(T){return T.set(lt*xt,pt*xt).floor()},this.setDrawingBufferSize=function(T,G,tt){lt=T,pt=G,xt=tt,e.width=Math.floor(T*tt),e.height=Math.floor(G*tt),this.setViewport(0,0,T,G)},this.setEffects=function(T){if(x===Jn){ee("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(T){for(let G=0;G<T.length;G++)if(T[G].isOutputPass===!0){Yt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}F.setEffects(T||[])},this.getCurrentViewport=function(T){return T.copy(et)},this.getViewport=function(T){return T.copy(Vt)},this.setViewport=function(T,G,tt,Z){T.isVector4?Vt.set(T.x,T.y,T.z,T.w):Vt.set(T,G,tt,Z),Et.viewport(et.copy(Vt).multiplyScalar(on()).round())},this.getScissor=function(T){return T.copy(de)},this.setScissor=function(T,G,tt,Z){T.isVector4?de.set(T.x,T.y,T.z,T.w):de.set(T,G,tt,Z),Et.scissor(ht.copy(de).multiplyScalar(on()).round())},this.getScissorTest=function(){return ce},this.setScissorTest=function(T){Et.setScissorTest(ce=T)},this.setOpaqueSort=function(T){Ht=T},this.setTransparentSort=function(T){jt=T},this.getClearColor=function(T){return T.copy(B.getClearColor())},this.setClearColor=function(){B.setClearColor(...arguments)},this.getClearAlpha=function(){return B.getClearAlpha()},this.setClearAlpha=function(){B.setClearAlpha(...arguments)},this.clear=function(T=!0,G=!0,tt=!0){let Z=0;if(T){let J=!1;if(st!==null){let At=st.texture.format;J=p.has(At)}if(J){let At=st.texture.type,It=m.has(At),Rt=B.getClearColor(),Lt=B.getClearAlpha(),zt=Rt.r,te=Rt.g,fe=Rt.b;It?(y[0]=zt,y[1]=te,y[2]=fe,y[3]=Lt,k.clearBufferuiv(k.COLOR,0,y)):(A[0]=zt,A[1]=te,A[2]=fe,A[3]=Lt,k.clearBufferiv(k.COLOR,0,A))}else Z|=k.COLOR_BUFFER_BIT}G&&(Z|=k.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),tt&&(Z|=k.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),Z!==0&&k.clear(Z)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(T){T.setRenderer(this),V=T},this.dispose=function(){e.removeEventListener("webglcontextlost",Bt,!1),e.removeEventListener("webglcontextrestored",Qt,!1),e.removeEventListener("webglcontextcreationerror",Ct,!1),B.dispose(),bt.dispose(),nt.dispose(),qt.dispose(),Gt.dispose(),L.dispose(),ft.dispose(),Y.dispose(),wt.dispose(),Wt.dispose(),at.dispose(),dt.dispose(),dt.removeEventListener("sessionstart",wa),dt.removeEventListener("sessionend",Ui),Zi.stop()};function Bt(T){T.preventDefault(),td("WebGLRenderer: Context Lost."),C=!0}function Qt(){td("WebGLRenderer: Context Restored."),C=!1;let T=Ne.autoReset,G=yt.enabled,tt=yt.autoUpdate,Z=yt.needsUpdate,J=yt.type;Kt(),Ne.autoReset=T,yt.enabled=G,yt.autoUpdate=tt,yt.needsUpdate=Z,yt.type=J}function Ct(T){ee("WebGLRenderer: A WebGL context could not be created. Reason: ",T.statusMessage)}function le(T){let G=T.target;G.removeEventListener("dispose",le),Be(G)}function Be(T){kn(T),Gt.remove(T)}function kn(T){let G=Gt.get(T).programs;G!==void 0&&(G.forEach(function(tt){at.releaseProgram(tt)}),T.isShaderMaterial&&at.releaseShaderCache(T))}this.renderBufferDirect=function(T,G,tt,Z,J,At){G===null&&(G=fn);let It=J.isMesh&&J.matrixWorld.determinantAffine()<0,Rt=go(T,G,tt,Z,J);Et.setMaterial(Z,It);let Lt=tt.index,zt=1;if(Z.wireframe===!0){if(Lt=Y.getWireframeAttribute(tt),Lt===void 0)return;zt=2}let te=tt.drawRange,fe=tt.attributes.position,kt=te.start*zt,pe=(te.start+te.count)*zt;At!==null&&(kt=Math.max(kt,At.start*zt),pe=Math.min(pe,(At.start+At.count)*zt)),Lt!==null?(kt=Math.max(kt,0),pe=Math.min(pe,Lt.count)):fe!=null&&(kt=Math.max(kt,0),pe=Math.min(pe,fe.count));let Ye=pe-kt;if(Ye<0||Ye===1/0)return;wt.setup(J,Z,Rt,tt,Lt);let Ce,Pe=it;if(Lt!==null&&(Ce=S.get(Lt),Pe=Tt,Pe.setIndex(Ce)),J.isMesh)Z.wireframe===!0?(Et.setLineWidth(Z.wireframeLinewidth*on()),Pe.setMode(k.LINES)):Pe.setMode(k.TRIANGLES);else if(J.isLine){let pn=Z.linewidth;pn===void 0&&(pn=1),Et.setLineWidth(pn*on()),J.isLineSegments?Pe.setMode(k.LINES):J.isLineLoop?Pe.setMode(k.LINE_LOOP):Pe.setMode(k.LINE_STRIP)}else J.isPoints?Pe.setMode(k.POINTS):J.isSprite&&Pe.setMode(k.TRIANGLES);if(J.isBatchedMesh)if(Zt.get("WEBGL_multi_draw"))Pe.renderMultiDraw(J._multiDrawStarts,J._multiDrawCounts,J._multiDrawCount);else{let pn=J._multiDrawStarts,Ft=J._multiDrawCounts,an=J._multiDrawCount,xe=Lt?S.get(Lt).bytesPerElement:1,ji=Gt.get(Z).currentProgram.getUniforms();for(let ln=0;ln<an;ln++)ji.setValue(k,"_gl_DrawID",ln),Pe.render(pn[ln]/xe,Ft[ln])}else if(J.isInstancedMesh)Pe.renderInstances(kt,Ye,J.count);else if(tt.isInstancedBufferGeometry){let pn=tt._maxInstanceCount!==void 0?tt._maxInstanceCount:1/0,Ft=Math.min(tt.instanceCount,pn);Pe.renderInstances(kt,Ye,Ft)}else Pe.render(kt,Ye)};function fo(T,G,tt,Z){V!==null&&T.isNodeMaterial&&V.setObject(Z,T),Oe===!0&&rt.setState(T,tt,!1),T.transparent===!0&&T.side===Yn&&T.forceSinglePass===!1?(T.side=In,T.needsUpdate=!0,Fi(T,G,Z),T.side=Pi,T.needsUpdate=!0,Fi(T,G,Z),T.side=Yn):Fi(T,G,Z)}this.compile=function(T,G,tt=null){tt===null&&(tt=T),V!==null&&V.renderStart(T,G,tt),w=nt.get(tt),w.init(G),b.push(w),tt.traverseVisible(function(J){J.isLight&&J.layers.test(G.layers)&&(w.pushLight(J),J.castShadow&&w.pushShadow(J))}),T!==tt&&T.traverseVisible(function(J){J.isLight&&J.layers.test(G.layers)&&(w.pushLight(J),J.castShadow&&w.pushShadow(J))}),w.setupLights(),V!==null&&V.updateLights(w.state.lightsArray),rn=this.localClippingEnabled,Oe=rt.init(this.clippingPlanes,rn),Oe===!0&&rt.setGlobalState(this.clippingPlanes,G),V!==null&&yt.render(w.state.shadowsArray,tt,G);let Z=new Set;return T.traverse(function(J){if(!(J.isMesh||J.isPoints||J.isLine||J.isSprite))return;let At=J.material;if(At)if(Array.isArray(At))for(let It=0;It<At.length;It++){let Rt=At[It];fo(Rt,tt,G,J),Z.add(Rt)}else fo(At,tt,G,J),Z.add(At)}),w=b.pop(),V!==null&&V.renderEnd(),Z},this.compileAsync=function(T,G,tt=null){let Z=this.compile(T,G,tt);return new Promise(J=>{function At(){if(Z.forEach(function(It){let Lt=Gt.get(It).currentProgram;(Lt===void 0||Lt.isReady())&&Z.delete(It)}),Z.size===0){J(T);return}setTimeout(At,10)}Zt.get("KHR_parallel_shader_compile")!==null?At():setTimeout(At,10)})};let ur=null;function lh(T){ur&&ur(T)}function wa(){Zi.stop()}function Ui(){Zi.start()}let Zi=new Sg;Zi.setAnimationLoop(lh),typeof self<"u"&&Zi.setContext(self),this.setAnimationLoop=function(T){ur=T,dt.setAnimationLoop(T),T===null?Zi.stop():Zi.start()},dt.addEventListener("sessionstart",wa),dt.addEventListener("sessionend",Ui),this.render=function(T,G){if(G!==void 0&&G.isCamera!==!0){ee("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(C===!0)return;V!==null&&V.renderStart(T,G);let tt=dt.enabled===!0&&dt.isPresenting===!0,Z=F!==null&&(st===null||tt)&&F.begin(I,st);if(T.matrixWorldAutoUpdate===!0&&T.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),dt.enabled===!0&&dt.isPresenting===!0&&(F===null||F.isCompositing()===!1)&&(dt.cameraAutoUpdate===!0&&dt.updateCamera(G),G=dt.getCamera()),T.isScene===!0&&T.onBeforeRender(I,T,G,st),w=nt.get(T,b.length),w.init(G),w.state.textureUnits=qt.getTextureUnits(),b.push(w),Le.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?Xe.setFromArrayCamera(G):se.setFromProjectionMatrix(Le,_i,G.reversedDepth),rn=this.localClippingEnabled,Oe=rt.init(this.clippingPlanes,rn),R=bt.get(T,_.length),R.init(),_.push(R),this.info.render.frame++,dt.enabled===!0&&dt.isPresenting===!0){let It=I.xr.getDepthSensingMesh();It!==null&&Ji(It,G,-1/0,I.sortObjects)}Ji(T,G,0,I.sortObjects),R.finish(),V!==null&&V.updateLights(w.state.lightsArray),I.sortObjects===!0&&R.sort(Ht,jt),Ze=dt.enabled===!1||dt.isPresenting===!1||dt.hasDepthSensing()===!1,Ze&&B.addToRenderList(R,T),this.info.autoReset===!0&&this.info.reset(),Oe===!0&&rt.beginShadows();let J=w.state.shadowsArray;if(yt.render(J,T,G),Oe===!0&&rt.endShadows(),(Z&&F.hasRenderPass())===!1){let It=R.opaque,Rt=R.transmissive;if(w.setupLights(),G.isArrayCamera){let Lt=G.cameras;if(Rt.length>0)for(let zt=0,te=Lt.length;zt<te;zt++){let fe=Lt[zt];yi(It,Rt,T,fe)}Ze&&B.render(T);for(let zt=0,te=Lt.length;zt<te;zt++){let fe=Lt[zt];po(R,T,fe,fe.viewport)}}else Rt.length>0&&yi(It,Rt,T,G),Ze&&B.render(T),po(R,T,G)}st!==null&&O===0&&(qt.updateMultisampleRenderTarget(st),qt.updateRenderTargetMipmap(st)),Z&&F.end(I),T.isScene===!0&&T.onAfterRender(I,T,G),wt.resetDefaultState(),W=-1,q=null,b.pop(),b.length>0?(w=b[b.length-1],qt.setTextureUnits(w.state.textureUnits),Oe===!0&&rt.setGlobalState(I.clippingPlanes,w.state.camera)):w=null,_.pop(),_.length>0?R=_[_.length-1]:R=null,V!==null&&V.renderEnd()};function Ji(T,G,tt,Z){if(T.visible===!1)return;if(T.layers.test(G.layers)){if(T.isGroup)tt=T.renderOrder;else if(T.isLOD)T.autoUpdate===!0&&T.update(G);else if(T.isLight)w.pushLight(T),T.castShadow&&w.pushShadow(T);else if(T.isSprite){let It=G.isArrayCamera?Xe:se;if(!T.frustumCulled||T.intersectsFrustum(It)){Z&&Me.setFromMatrixPosition(T.matrixWorld).applyMatrix4(Le);let Rt=ft.update(T),Lt=T.material;Lt.visible&&R.push(T,Rt,Lt,tt,Me.z,null,G)}}else if(T.isMesh||T.isLine||T.isPoints){let It=G.isArrayCamera?Xe:se;if(!T.frustumCulled||T.intersectsFrustum(It)){let Rt=ft.update(T),Lt=T.material;if(Z&&(T.boundingSphere!==void 0?(T.boundingSphere===null&&T.computeBoundingSphere(),Me.copy(T.boundingSphere.center)):(Rt.boundingSphere===null&&Rt.computeBoundingSphere(),Me.copy(Rt.boundingSphere.center)),Me.applyMatrix4(T.matrixWorld).applyMatrix4(Le)),Array.isArray(Lt)){let zt=Rt.groups;for(let te=0,fe=zt.length;te<fe;te++){let kt=zt[te],pe=Lt[kt.materialIndex];pe&&pe.visible&&R.push(T,Rt,pe,tt,Me.z,kt,G)}}else Lt.visible&&R.push(T,Rt,Lt,tt,Me.z,null,G)}}}let At=T.children;for(let It=0,Rt=At.length;It<Rt;It++)Ji(At[It],G,tt,Z)}function po(T,G,tt,Z){let{opaque:J,transmissive:At,transparent:It}=T;w.setupLightsView(tt),Oe===!0&&rt.setGlobalState(I.clippingPlanes,tt),Z&&Et.viewport(et.copy(Z)),J.length>0&&Je(J,G,tt),At.length>0&&Je(At,G,tt),It.length>0&&Je(It,G,tt),Et.buffers.depth.setTest(!0),Et.buffers.depth.setMask(!0),Et.buffers.color.setMask(!0),Et.setPolygonOffset(!1)}function yi(T,G,tt,Z){if((tt.isScene===!0?tt.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[Z.id]===void 0){let kt=Zt.has("EXT_color_buffer_half_float")||Zt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[Z.id]=new hi(1,1,{generateMipmaps:!0,type:kt?Di:Jn,minFilter:fs,samples:Math.max(4,ae.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ve.workingColorSpace})}let At=w.state.transmissionRenderTarget[Z.id],It=Z.viewport||et;At.setSize(It.z*I.transmissionResolutionScale,It.w*I.transmissionResolutionScale);let Rt=I.getRenderTarget(),Lt=I.getActiveCubeFace(),zt=I.getActiveMipmapLevel();I.setRenderTarget(At),I.getClearColor(K),gt=I.getClearAlpha(),gt<1&&I.setClearColor(16777215,.5),I.clear(),Ze&&B.render(tt);let te=I.toneMapping;I.toneMapping=$i;let fe=Z.viewport;if(Z.viewport!==void 0&&(Z.viewport=void 0),w.setupLightsView(Z),Oe===!0&&rt.setGlobalState(I.clippingPlanes,Z),Je(T,tt,Z),qt.updateMultisampleRenderTarget(At),qt.updateRenderTargetMipmap(At),Zt.has("WEBGL_multisampled_render_to_texture")===!1){let kt=!1;for(let pe=0,Ye=G.length;pe<Ye;pe++){let Ce=G[pe],{object:Pe,geometry:pn,material:Ft,group:an}=Ce;if(Ft.side===Yn&&Pe.layers.test(Z.layers)){let xe=Ft.side;Ft.side=In,Ft.needsUpdate=!0,en(Pe,tt,Z,pn,Ft,an),Ft.side=xe,Ft.needsUpdate=!0,kt=!0}}kt===!0&&(qt.updateMultisampleRenderTarget(At),qt.updateRenderTargetMipmap(At))}I.setRenderTarget(Rt,Lt,zt),I.setClearColor(K,gt),fe!==void 0&&(Z.viewport=fe),I.toneMapping=te}function Je(T,G,tt){let Z=G.isScene===!0?G.overrideMaterial:null;for(let J=0,At=T.length;J<At;J++){let It=T[J],{object:Rt,geometry:Lt,group:zt}=It,te=It.material;te.allowOverride===!0&&Z!==null&&(te=Z),Rt.layers.test(tt.layers)&&en(Rt,G,tt,Lt,te,zt)}}function en(T,G,tt,Z,J,At){V!==null&&J.isNodeMaterial&&V.setObject(T,J),T.onBeforeRender(I,G,tt,Z,J,At),T.modelViewMatrix.multiplyMatrices(tt.matrixWorldInverse,T.matrixWorld),T.normalMatrix.getNormalMatrix(T.modelViewMatrix),J.onBeforeRender(I,G,tt,Z,T,At),J.transparent===!0&&J.side===Yn&&J.forceSinglePass===!1?(J.side=In,J.needsUpdate=!0,I.renderBufferDirect(tt,G,Z,J,T,At),J.side=Pi,J.needsUpdate=!0,I.renderBufferDirect(tt,G,Z,J,T,At),J.side=Yn):I.renderBufferDirect(tt,G,Z,J,T,At),T.onAfterRender(I,G,tt,Z,J,At)}function nn(T){let G=0;for(let tt of T)tt.texture!==null&&G++;return G}function Fi(T,G,tt){G.isScene!==!0&&(G=fn);let Z=Gt.get(T),J=w.state.lights,At=w.state.shadowsArray,It=J.state.version,Rt=at.getParameters(T,J.state,At,G,tt,w.state.lightProbeGridArray),Lt=at.getProgramCacheKey(Rt),zt=Z.programs;Z.environment=T.isMeshStandardMaterial||T.isMeshLambertMaterial||T.isMeshPhongMaterial?G.environment:null,Z.fog=G.fog;let te=T.isMeshStandardMaterial||T.isMeshLambertMaterial&&!T.envMap||T.isMeshPhongMaterial&&!T.envMap;Z.envMap=L.get(T.envMap||Z.environment,te),Z.envMapRotation=Z.environment!==null&&T.envMap===null?G.environmentRotation:T.envMapRotation,zt===void 0&&(T.addEventListener("dispose",le),zt=new Map,Z.programs=zt,Z.programVariants=new Map);let fe=zt.get(Lt);if(fe!==void 0){if(Z.currentProgram===fe&&Z.lightsStateVersion===It)return mo(T,Rt),fe}else Rt.uniforms=at.getUniforms(T),V!==null&&T.isNodeMaterial&&V.build(T,tt,Rt),T.onBeforeCompile(Rt,I),fe=at.acquireProgram(Rt,Lt),zt.set(Lt,fe),Z.uniforms=Rt.uniforms;let kt=Z.uniforms;return(!T.isShaderMaterial&&!T.isRawShaderMaterial||T.clipping===!0)&&(kt.clippingPlanes=rt.uniform),mo(T,Rt),Z.needsLights=_s(T),Z.lightsStateVersion=It,Z.needsLights&&(kt.ambientLightColor.value=J.state.ambient,kt.lightProbe.value=J.state.probe,kt.sunLights.value=J.state.sun,kt.sunLightShadows.value=J.state.sunShadow,kt.directionalLights.value=J.state.directional,kt.directionalLightShadows.value=J.state.directionalShadow,kt.spotLights.value=J.state.spot,kt.spotLightShadows.value=J.state.spotShadow,kt.rectAreaLights.value=J.state.rectArea,kt.ltc_1.value=J.state.rectAreaLTC1,kt.ltc_2.value=J.state.rectAreaLTC2,kt.pointLights.value=J.state.point,kt.pointLightShadows.value=J.state.pointShadow,kt.hemisphereLights.value=J.state.hemi,kt.sunShadowMatrix.value=J.state.sunShadowMatrix,kt.sunShadowCascade.value=J.state.sunShadowCascade,kt.directionalShadowMatrix.value=J.state.directionalShadowMatrix,kt.spotLightMatrix.value=J.state.spotLightMatrix,kt.spotLightMap.value=J.state.spotLightMap,kt.pointShadowMatrix.value=J.state.pointShadowMatrix),Z.numLightProbeGrids=nn(w.state.lightProbeGridArray),Z.currentProgram=fe,Z.uniformsList=null,fe}function Kn(T,G,tt,Z,J){let At=Gt.get(T),It=At.currentProgram.id+","+Z+","+J,Rt=At.programVariants.get(It);return Rt===void 0?(Rt=Fi(T,G,tt),At.programVariants.set(It,Rt)):(At.currentProgram=Rt,At.uniformsList=null,At.outputColorSpace=Z,At.toneMapping=J),Rt}function gs(T){if(T.uniformsList===null){let G=T.currentProgram.getUniforms();T.uniformsList=ho.seqWithValue(G.seq,T.uniforms)}return T.uniformsList}function mo(T,G){let tt=Gt.get(T);tt.outputColorSpace=G.outputColorSpace,tt.batching=G.batching,tt.batchingColor=G.batchingColor,tt.instancing=G.instancing,tt.instancingColor=G.instancingColor,tt.instancingMorph=G.instancingMorph,tt.skinning=G.skinning,tt.morphTargets=G.morphTargets,tt.morphNormals=G.morphNormals,tt.morphColors=G.morphColors,tt.morphTargetsCount=G.morphTargetsCount,tt.numClippingPlanes=G.numClippingPlanes,tt.numIntersection=G.numClipIntersection,tt.vertexAlphas=G.vertexAlphas,tt.vertexTangents=G.vertexTangents,tt.toneMapping=G.toneMapping}function go(T,G,tt,Z,J){G.isScene!==!0&&(G=fn),qt.resetTextureUnits();let At=G.fog,It=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial?G.environment:null,Rt=st===null?I.outputColorSpace:st.isXRRenderTarget===!0?st.texture.colorSpace:ve.workingColorSpace,Lt=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial&&!Z.envMap||Z.isMeshPhongMaterial&&!Z.envMap,zt=L.get(Z.envMap||It,Lt),te=Z.vertexColors===!0&&!!tt.attributes.color&&tt.attributes.color.itemSize===4,fe=!!tt.attributes.tangent&&(!!Z.normalMap||Z.anisotropy>0),kt=!!tt.morphAttributes.position,pe=!!tt.morphAttributes.normal,Ye=!!tt.morphAttributes.color,Ce=$i;Z.toneMapped&&(st===null||st.isXRRenderTarget===!0)&&(Ce=I.toneMapping);let Pe=tt.morphAttributes.position||tt.morphAttributes.normal||tt.morphAttributes.color,pn=Pe!==void 0?Pe.length:0,Ft=Gt.get(Z),an=w.state.lights;if(Oe===!0&&(rn===!0||T!==q)){let Ie=T===q&&Z.id===W;rt.setState(Z,T,Ie)}let xe=!1,ji=!1;Z.version===Ft.__version?Ft.needsLights&&Ft.lightsStateVersion!==an.state.version||J.isBatchedMesh&&Ft.batching===!1||!J.isBatchedMesh&&Ft.batching===!0||J.isBatchedMesh&&Ft.batchingColor===!0&&J._colorsTexture===null||J.isBatchedMesh&&Ft.batchingColor===!1&&J._colorsTexture!==null||J.isInstancedMesh&&Ft.instancing===!1||!J.isInstancedMesh&&Ft.instancing===!0||J.isSkinnedMesh&&Ft.skinning===!1||!J.isSkinnedMesh&&Ft.skinning===!0||J.isInstancedMesh&&Ft.instancingColor===!0&&J.instanceColor===null||J.isInstancedMesh&&Ft.instancingColor===!1&&J.instanceColor!==null||J.isInstancedMesh&&Ft.instancingMorph===!0&&J.morphTexture===null||J.isInstancedMesh&&Ft.instancingMorph===!1&&J.morphTexture!==null||Ft.envMap!==zt||Z.fog===!0&&Ft.fog!==At||Ft.numClippingPlanes!==void 0&&(Ft.numClippingPlanes!==rt.numPlanes||Ft.numIntersection!==rt.numIntersection)||Ft.vertexAlphas!==te||Ft.vertexTangents!==fe||Ft.morphTargets!==kt||Ft.morphNormals!==pe||Ft.morphColors!==Ye||Ft.morphTargetsCount!==pn||Ft.numLightProbeGrids!==nn(w.state.lightProbeGridArray)?xe=!0:(Ft.outputColorSpace!==Rt||Ft.toneMapping!==Ce)&&(ji=!0):(xe=!0,Ft.__version=Z.version);let ln=Ft.currentProgram;(xe===!0||ji===!0)&&(ln=ji===!0?Kn(Z,G,J,Rt,Ce):Fi(Z,G,J),V&&Z.isNodeMaterial&&V.onUpdateProgram(Z,ln,Ft));let pr=!1,Oi=!1,Ki=!1,he=ln.getUniforms(),je=Ft.uniforms;if(Et.useProgram(ln.program)&&(pr=!0,Oi=!0,Ki=!0),Z.id!==W&&(W=Z.id,Oi=!0),pr||q!==T){Et.buffers.depth.getReversed()&&T.reversedDepth!==!0&&(T._reversedDepth=!0,T.updateProjectionMatrix()),he.setValue(k,"projectionMatrix",T.projectionMatrix),he.setValue(k,"viewMatrix",T.matrixWorldInverse);let cn=he.map.cameraPosition;cn!==void 0&&cn.setValue(k,vn.setFromMatrixPosition(T.matrixWorld)),ae.logarithmicDepthBuffer&&he.setValue(k,"logDepthBufFC",2/(Math.log(T.far+1)/Math.LN2)),(Z.isMeshPhongMaterial||Z.isMeshToonMaterial||Z.isMeshLambertMaterial||Z.isMeshBasicMaterial||Z.isMeshStandardMaterial||Z.isShaderMaterial)&&he.setValue(k,"isOrthographic",T.isOrthographicCamera===!0),q!==T&&(q=T,Oi=!0,Ki=!0)}if(Ft.needsLights&&(an.state.sunShadowMap.length>0&&he.setValue(k,"sunShadowMap",an.state.sunShadowMap,qt),an.state.directionalShadowMap.length>0&&he.setValue(k,"directionalShadowMap",an.state.directionalShadowMap,qt),an.state.spotShadowMap.length>0&&he.setValue(k,"spotShadowMap",an.state.spotShadowMap,qt),an.state.pointShadowMap.length>0&&he.setValue(k,"pointShadowMap",an.state.pointShadowMap,qt)),J.isSkinnedMesh){he.setOptional(k,J,"bindMatrix"),he.setOptional(k,J,"bindMatrixInverse");let Ie=J.skeleton;Ie&&(Ie.boneTexture===null&&Ie.computeBoneTexture(),he.setValue(k,"boneTexture",Ie.boneTexture,qt))}J.isBatchedMesh&&(he.setOptional(k,J,"batchingTexture"),he.setValue(k,"batchingTexture",J._matricesTexture,qt),he.setOptional(k,J,"batchingIdTexture"),he.setValue(k,"batchingIdTexture",J._indirectTexture,qt),he.setOptional(k,J,"batchingColorTexture"),J._colorsTexture!==null&&he.setValue(k,"batchingColorTexture",J._colorsTexture,qt));let zn=tt.morphAttributes;if((zn.position!==void 0||zn.normal!==void 0||zn.color!==void 0)&&ot.update(J,tt,ln),(Oi||Ft.receiveShadow!==J.receiveShadow)&&(Ft.receiveShadow=J.receiveShadow,he.setValue(k,"receiveShadow",J.receiveShadow)),(Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial)&&Z.envMap===null&&G.environment!==null&&(je.envMapIntensity.value=G.environmentIntensity),je.dfgLUT!==void 0&&(je.dfgLUT.value=aw()),Oi){if(he.setValue(k,"toneMappingExposure",I.toneMappingExposure),Ft.needsLights&&dr(je,Ki),At&&Z.fog===!0&&Mt.refreshFogUniforms(je,At),Mt.refreshMaterialUniforms(je,Z,xt,pt,w.state.transmissionRenderTarget[T.id]),Ft.needsLights&&Ft.numLightProbeGrids>0){let Ie=M,cn=0;for(let Ln of w.state.lightProbeGridArray)Ln.texture!==null&&(Ie.textures[cn]=Ln.texture,Ie.min[cn]=Ln.boundingBox.min,Ie.max[cn]=Ln.boundingBox.max,Ie.resolution[cn]=Ln.resolution,cn++);for(let Ln in Ie)Ie[Ln].length=cn;je.probesSH.value=Ie.textures,je.probesMin.value=Ie.min,je.probesMax.value=Ie.max,je.probesResolution.value=Ie.resolution}ho.upload(k,gs(Ft),je,qt)}if(Z.isShaderMaterial&&Z.uniformsNeedUpdate===!0&&(ho.upload(k,gs(Ft),je,qt),Z.uniformsNeedUpdate=!1),Z.isSpriteMaterial&&he.setValue(k,"center",J.center),he.setValue(k,"modelViewMatrix",J.modelViewMatrix),he.setValue(k,"normalMatrix",J.normalMatrix),he.setValue(k,"modelMatrix",J.matrixWorld),Z.uniformsGroups!==void 0){let Ie=Z.uniformsGroups;for(let cn=0,Ln=Ie.length;cn<Ln;cn++){let Ea=Ie[cn];Wt.update(Ea,ln),Wt.bind(Ea,ln)}}return ln}function dr(T,G){T.ambientLightColor.needsUpdate=G,T.lightProbe.needsUpdate=G,T.sunLights.needsUpdate=G,T.sunLightShadows.needsUpdate=G,T.directionalLights.needsUpdate=G,T.directionalLightShadows.needsUpdate=G,T.pointLights.needsUpdate=G,T.pointLightShadows.needsUpdate=G,T.spotLights.needsUpdate=G,T.spotLightShadows.needsUpdate=G,T.rectAreaLights.needsUpdate=G,T.hemisphereLights.needsUpdate=G}function _s(T){return T.isMeshLambertMaterial||T.isMeshToonMaterial||T.isMeshPhongMaterial||T.isMeshStandardMaterial||T.isShadowMaterial||T.isShaderMaterial&&T.lights===!0}this.getActiveCubeFace=function(){return $},this.getActiveMipmapLevel=function(){return O},this.getRenderTarget=function(){return st},this.setRenderTargetTextures=function(T,G,tt){let Z=Gt.get(T);Z.__autoAllocateDepthBuffer=T.resolveDepthBuffer===!1,Z.__autoAllocateDepthBuffer===!1&&(Z.__useRenderToTexture=!1),Gt.get(T.texture).__webglTexture=G,Gt.get(T.depthTexture).__webglTexture=Z.__autoAllocateDepthBuffer?void 0:tt,Z.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(T,G){let tt=Gt.get(T);tt.__webglFramebuffer=G,tt.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(T,G=0,tt=0){st=T,$=G,O=tt;let Z=null,J=!1,At=!1;if(T){let Rt=Gt.get(T);if(Rt.__useDefaultFramebuffer!==void 0){Et.bindFramebuffer(k.FRAMEBUFFER,Rt.__webglFramebuffer),et.copy(T.viewport),ht.copy(T.scissor),ut=T.scissorTest,Et.viewport(et),Et.scissor(ht),Et.setScissorTest(ut),W=-1;return}else if(Rt.__webglFramebuffer===void 0)qt.setupRenderTarget(T);else if(Rt.__hasExternalTextures)qt.rebindTextures(T,Gt.get(T.texture).__webglTexture,Gt.get(T.depthTexture).__webglTexture);else if(T.depthBuffer){let te=T.depthTexture;if(Rt.__boundDepthTexture!==te){if(te!==null&&Gt.has(te)&&(T.width!==te.image.width||T.height!==te.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");qt.setupDepthRenderbuffer(T)}}let Lt=T.texture;(Lt.isData3DTexture||Lt.isDataArrayTexture||Lt.isCompressedArrayTexture)&&(At=!0);let zt=Gt.get(T).__webglFramebuffer;T.isWebGLCubeRenderTarget?(Array.isArray(zt[G])?Z=zt[G][tt]:Z=zt[G],J=!0):T.samples>0&&qt.useMultisampledRTT(T)===!1?Z=Gt.get(T).__webglMultisampledFramebuffer:Array.isArray(zt)?Z=zt[tt]:Z=zt,et.copy(T.viewport),ht.copy(T.scissor),ut=T.scissorTest}else et.copy(Vt).multiplyScalar(xt).floor(),ht.copy(de).multiplyScalar(xt).floor(),ut=ce;if(tt!==0&&(Z=U),Et.bindFramebuffer(k.FRAMEBUFFER,Z)&&Et.drawBuffers(T,Z),Et.viewport(et),Et.scissor(ht),Et.setScissorTest(ut),J){let Rt=Gt.get(T.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_CUBE_MAP_POSITIVE_X+G,Rt.__webglTexture,tt)}else if(At){let Rt=G;for(let Lt=0;Lt<T.textures.length;Lt++){let zt=Gt.get(T.textures[Lt]);k.framebufferTextureLayer(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0+Lt,zt.__webglTexture,tt,Rt)}}else if(T!==null&&tt!==0){let Rt=Gt.get(T.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,Rt.__webglTexture,tt)}W=-1};function fr(T){let G=Gt.get(T);return(G.__readFormat!==T.format||G.__readType!==T.type)&&(G.__readFormat=T.format,G.__readType=T.type,G.__formatReadable=ae.textureFormatReadable(T.format),G.__typeReadable=ae.textureTypeReadable(T.type)),G}this.readRenderTargetPixels=function(T,G,tt,Z,J,At,It,Rt=0){if(!(T&&T.isWebGLRenderTarget)){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Lt=Gt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&It!==void 0&&(Lt=Lt[It],Array.isArray(Lt)&&(Lt=Lt[0])),Lt){Et.bindFramebuffer(k.FRAMEBUFFER,Lt);try{let zt=T.textures[Rt],te=zt.format,fe=zt.type;T.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Rt);let kt=fr(zt);if(kt.__formatReadable===!1){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(kt.__typeReadable===!1){ee("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=T.width-Z&&tt>=0&&tt<=T.height-J&&k.readPixels(G,tt,Z,J,vt.convert(te),vt.convert(fe),At)}finally{let zt=st!==null?Gt.get(st).__webglFramebuffer:null;Et.bindFramebuffer(k.FRAMEBUFFER,zt)}}},this.readRenderTargetPixelsAsync=async function(T,G,tt,Z,J,At,It,Rt=0){if(!(T&&T.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Lt=Gt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&It!==void 0&&(Lt=Lt[It],Array.isArray(Lt)&&(Lt=Lt[0])),Lt)if(G>=0&&G<=T.width-Z&&tt>=0&&tt<=T.height-J){Et.bindFramebuffer(k.FRAMEBUFFER,Lt);let zt=T.textures[Rt],te=zt.format,fe=zt.type;T.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Rt);let kt=fr(zt);if(kt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(kt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let pe=k.createBuffer();k.bindBuffer(k.PIXEL_PACK_BUFFER,pe),k.bufferData(k.PIXEL_PACK_BUFFER,At.byteLength,k.STREAM_READ),k.readPixels(G,tt,Z,J,vt.convert(te),vt.convert(fe),0),k.bindBuffer(k.PIXEL_PACK_BUFFER,null);let Ye=st!==null?Gt.get(st).__webglFramebuffer:null;Et.bindFramebuffer(k.FRAMEBUFFER,Ye);let Ce=k.fenceSync(k.SYNC_GPU_COMMANDS_COMPLETE,0);return k.flush(),await Ym(k,Ce,4),k.bindBuffer(k.PIXEL_PACK_BUFFER,pe),k.getBufferSubData(k.PIXEL_PACK_BUFFER,0,At),k.bindBuffer(k.PIXEL_PACK_BUFFER,null),k.deleteBuffer(pe),k.deleteSync(Ce),At}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(T,G=null,tt=0){let Z=Math.pow(2,-tt),J=Math.floor(T.image.width*Z),At=Math.floor(T.image.height*Z),It=G!==null?G.x:0,Rt=G!==null?G.y:0;qt.setTexture2D(T,0),k.copyTexSubImage2D(k.TEXTURE_2D,tt,0,0,It,Rt,J,At),Et.unbindTexture()},this.copyTextureToTexture=function(T,G,tt=null,Z=null,J=0,At=0){let It,Rt,Lt,zt,te,fe,kt,pe,Ye,Ce=T.isCompressedTexture?T.mipmaps[At]:T.image;if(tt!==null)It=tt.max.x-tt.min.x,Rt=tt.max.y-tt.min.y,Lt=tt.isBox3?tt.max.z-tt.min.z:1,zt=tt.min.x,te=tt.min.y,fe=tt.isBox3?tt.min.z:0;else{let he=Math.pow(2,-J);It=Math.floor(Ce.width*he),Rt=Math.floor(Ce.height*he),T.isDataArrayTexture?Lt=Ce.depth:T.isData3DTexture?Lt=Math.floor(Ce.depth*he):Lt=1,zt=0,te=0,fe=0}Z!==null?(kt=Z.x,pe=Z.y,Ye=Z.z):(kt=0,pe=0,Ye=0);let Pe=vt.convert(G.format),pn=vt.convert(G.type),Ft;G.isData3DTexture?(qt.setTexture3D(G,0),Ft=k.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(qt.setTexture2DArray(G,0),Ft=k.TEXTURE_2D_ARRAY):(qt.setTexture2D(G,0),Ft=k.TEXTURE_2D),Et.activeTexture(k.TEXTURE0),Et.pixelStorei(k.UNPACK_FLIP_Y_WEBGL,G.flipY),Et.pixelStorei(k.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),Et.pixelStorei(k.UNPACK_ALIGNMENT,G.unpackAlignment);let an=Et.getParameter(k.UNPACK_ROW_LENGTH),xe=Et.getParameter(k.UNPACK_IMAGE_HEIGHT),ji=Et.getParameter(k.UNPACK_SKIP_PIXELS),ln=Et.getParameter(k.UNPACK_SKIP_ROWS),pr=Et.getParameter(k.UNPACK_SKIP_IMAGES);Et.pixelStorei(k.UNPACK_ROW_LENGTH,Ce.width),Et.pixelStorei(k.UNPACK_IMAGE_HEIGHT,Ce.height),Et.pixelStorei(k.UNPACK_SKIP_PIXELS,zt),Et.pixelStorei(k.UNPACK_SKIP_ROWS,te),Et.pixelStorei(k.UNPACK_SKIP_IMAGES,fe);let Oi=T.isDataArrayTexture||T.isData3DTexture,Ki=G.isDataArrayTexture||G.isData3DTexture;if(T.isDepthTexture){let he=Gt.get(T),je=Gt.get(G),zn=Gt.get(he.__renderTarget),Ie=Gt.get(je.__renderTarget);Et.bindFramebuffer(k.READ_FRAMEBUFFER,zn.__webglFramebuffer),Et.bindFramebuffer(k.DRAW_FRAMEBUFFER,Ie.__webglFramebuffer);for(let cn=0;cn<Lt;cn++)Oi&&(k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,Gt.get(T).__webglTexture,J,fe+cn),k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,Gt.get(G).__webglTexture,At,Ye+cn)),k.blitFramebuffer(zt,te,zt+It,te+Rt,kt,pe,kt+It,pe+Rt,k.DEPTH_BUFFER_BIT,k.NEAREST);Et.bindFramebuffer(k.READ_FRAMEBUFFER,null),Et.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else if(J!==0||T.isRenderTargetTexture||Gt.has(T)){let he=Gt.get(T),je=Gt.get(G);Et.bindFramebuffer(k.READ_FRAMEBUFFER,P),Et.bindFramebuffer(k.DRAW_FRAMEBUFFER,z);for(let zn=0;zn<Lt;zn++)Oi?k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,he.__webglTexture,J,fe+zn):k.framebufferTexture2D(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,he.__webglTexture,J),Ki?k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,je.__webglTexture,At,Ye+zn):k.framebufferTexture2D(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,je.__webglTexture,At),J!==0?k.blitFramebuffer(zt,te,zt+It,te+Rt,kt,pe,kt+It,pe+Rt,k.COLOR_BUFFER_BIT,k.NEAREST):Ki?k.copyTexSubImage3D(Ft,At,kt,pe,Ye+zn,zt,te,It,Rt):k.copyTexSubImage2D(Ft,At,kt,pe,zt,te,It,Rt);Et.bindFramebuffer(k.READ_FRAMEBUFFER,null),Et.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else Ki?T.isDataTexture||T.isData3DTexture?k.texSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,pn,Ce.data):G.isCompressedArrayTexture?k.compressedTexSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,Ce.data):k.texSubImage3D(Ft,At,kt,pe,Ye,It,Rt,Lt,Pe,pn,Ce):T.isDataTexture?k.texSubImage2D(k.TEXTURE_2D,At,kt,pe,It,Rt,Pe,pn,Ce.data):T.isCompressedTexture?k.compressedTexSubImage2D(k.TEXTURE_2D,At,kt,pe,Ce.width,Ce.height,Pe,Ce.data):k.texSubImage2D(k.TEXTURE_2D,At,kt,pe,It,Rt,Pe,pn,Ce);Et.pixelStorei(k.UNPACK_ROW_LENGTH,an),Et.pixelStorei(k.UNPACK_IMAGE_HEIGHT,xe),Et.pixelStorei(k.UNPACK_SKIP_PIXELS,ji),Et.pixelStorei(k.UNPACK_SKIP_ROWS,ln),Et.pixelStorei(k.UNPACK_SKIP_IMAGES,pr),At===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&k.generateMipmap(Ft),Et.unbindTexture()},this.initRenderTarget=function(T){Gt.get(T).__webglFramebuffer===void 0&&qt.setupRenderTarget(T)},this.initTexture=function(T){T.isCubeTexture?qt.setTextureCube(T,0):T.isData3DTexture?qt.setTexture3D(T,0):T.isDataArrayTexture||T.isCompressedArrayTexture?qt.setTexture2DArray(T,0):qt.setTexture2D(T,0),Et.unbindTexture()},this.resetState=function(){$=0,O=0,st=null,Et.reset(),wt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return _i}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=ve._getDrawingBufferColorSpace(t),e.unpackColorSpace=ve._getUnpackColorSpace()}};var Ng={type:"change"},vd={type:"start"},Fg={type:"end"},Jc=new ir,Ug=new Xn,lw=Math.cos(70*sd.DEG2RAD),yn=new X,jn=2*Math.PI,Te={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},yd=1e-6,jc=class extends la{constructor(t,e=null){super(t,e),this.state=Te.NONE,this.target=new X,this.cursor=new X,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Bs.ROTATE,MIDDLE:Bs.DOLLY,RIGHT:Bs.PAN},this.touches={ONE:ks.ROTATE,TWO:ks.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new X,this._lastQuaternion=new ci,this._lastTargetPosition=new X,this._quat=new ci().setFromUnitVectors(t.up,new X(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new so,this._sphericalDelta=new so,this._scale=1,this._panOffset=new X,this._rotateStart=new ne,this._rotateEnd=new ne,this._rotateDelta=new ne,this._panStart=new ne,this._panEnd=new ne,this._panDelta=new ne,this._dollyStart=new ne,this._dollyEnd=new ne,this._dollyDelta=new ne,this._dollyDirection=new X,this._mouse=new ne,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=hw.bind(this),this._onPointerDown=cw.bind(this),this._onPointerUp=uw.bind(this),this._onContextMenu=xw.bind(this),this._onMouseWheel=pw.bind(this),this._onKeyDown=mw.bind(this),this._onTouchStart=gw.bind(this),this._onTouchMove=_w.bind(this),this._onMouseDown=dw.bind(this),this._onMouseMove=fw.bind(this),this._interceptControlDown=yw.bind(this),this._interceptControlUp=vw.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Te.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Ng),this.update(),this.state=Te.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;yn.copy(e).sub(this.target),yn.applyQuaternion(this._quat),this._spherical.setFromVector3(yn),this.autoRotate&&this.state===Te.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=jn:n>Math.PI&&(n-=jn),s<-Math.PI?s+=jn:s>Math.PI&&(s-=jn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(yn.setFromSpherical(this._spherical),yn.applyQuaternion(this._quatInverse),e.copy(this.target).add(yn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=yn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new X(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new X(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=yn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Jc.origin.copy(this.object.position),Jc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Jc.direction))<lw?this.object.lookAt(this.target):(Ug.setFromNormalAndCoplanarPoint(this.object.up,this.target),Jc.intersectPlane(Ug,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>yd||8*(1-this._lastQuaternion.dot(this.object.quaternion))>yd||this._lastTargetPosition.distanceToSquared(this.target)>yd?(this.dispatchEvent(Ng),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?jn/60*this.autoRotateSpeed*t:jn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){yn.setFromMatrixColumn(e,0),yn.multiplyScalar(-t),this._panOffset.add(yn)}_panUp(t,e){this.screenSpacePanning===!0?yn.setFromMatrixColumn(e,1):(yn.setFromMatrixColumn(e,0),yn.crossVectors(this.object.up,yn)),yn.multiplyScalar(t),this._panOffset.add(yn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;yn.copy(s).sub(this.target);let r=yn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(jn*this._rotateDelta.x/e.clientHeight),this._rotateUp(jn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-jn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(jn*this._rotateDelta.x/e.clientHeight),this._rotateUp(jn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ne,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function cw(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function hw(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function uw(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(Fg),this.state=Te.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function dw(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Bs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Te.DOLLY;break;case Bs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Te.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Te.ROTATE}break;case Bs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Te.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Te.PAN}break;default:this.state=Te.NONE}this.state!==Te.NONE&&this.dispatchEvent(vd)}function fw(i){switch(this.state){case Te.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Te.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Te.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function pw(i){this.enabled===!1||this.enableZoom===!1||this.state!==Te.NONE||(i.preventDefault(),this.dispatchEvent(vd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(Fg))}function mw(i){this.enabled!==!1&&this._handleKeyDown(i)}function gw(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case ks.ROTATE:if(this.enableRotate===!1){this.state=Te.NONE;break}this._handleTouchStartRotate(i),this.state=Te.TOUCH_ROTATE;break;case ks.PAN:if(this.enablePan===!1){this.state=Te.NONE;break}this._handleTouchStartPan(i),this.state=Te.TOUCH_PAN;break;default:this.state=Te.NONE}break;case 2:switch(this.touches.TWO){case ks.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Te.TOUCH_DOLLY_PAN;break;case ks.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Te.TOUCH_DOLLY_ROTATE;break;default:this.state=Te.NONE}break;default:this.state=Te.NONE}this.state!==Te.NONE&&this.dispatchEvent(vd)}function _w(i){switch(this._trackPointer(i),this.state){case Te.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Te.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Te.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Te.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Te.NONE}}function xw(i){this.enabled!==!1&&i.preventDefault()}function yw(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function vw(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var Md=Math.PI/36,Mw=.06,Og=1.15,Bg=.02;function kg(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,l=new X().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let c=new X().setFromMatrixColumn(t.matrix,1),h=l.multiplyScalar(o).addScaledVector(c,a).multiplyScalar(Mw*s.length());n.add(h)}else{s.applyAxisAngle(t.up,o*Md);let c=Math.min(Math.PI-Bg,Math.max(Bg,s.angleTo(t.up)-a*Md));s.applyAxisAngle(l.applyAxisAngle(t.up,o*Md),c-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?Og:1/Og);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function bd(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new X(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var ww=["quiet","within","near","broken","waived","near","within"],Kc=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new qc({antialias:!0,alpha:!0}),this.soft=Tw(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new jc(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(kg(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new oa(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new aa(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new $o;camera=new $n(32,1,.1,1e4);controls;parts=new Map;seam=new Ri;marker=new Ri;labels=[];labelLayer=$t("div",{class:"scene-labels"});cutPlane=new Xn(new X(1,0,0),0);centre=new X;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Ri,s=Aw(t),r=e==="cover",o=new oe(sn(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new ea({color:o,side:r?Yn:Pi,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),l=Ew(new oe(sn(r?"cover-cut":"base-cut")),new oe(sn("ink")),r?-1:1),c=new Rn(s,l);c.visible=!1,c.name="inside";let h=new Rn(s,a);h.renderOrder=r?2:0;let u=new eo(Rw(t),new Ns({color:new oe(sn("ink")),transparent:!0,opacity:r?.5:.4}));u.renderOrder=r?3:1,n.add(h,c,u),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new X(1/0,1/0,1/0),e=new X(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new X(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of ri(n))t.min(new X(...s)),e.max(new X(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,tn(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new X(...js(t.beam).toward);for(let r of t.contours){let o=ri(r),a=(r.summary.rib_width?.median??1.5)*.36,l=new Uint8Array(o.length);for(let[c,h,u]of e.worst[r.id]??[])l.fill(u,c,h+1);this.seam.add(Cw(o.map(c=>new X(...c)),r.stations.u.map(c=>new X(...c)),n,a,l,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(x=>x.id===r.contour);if(!o)continue;let a=new X(...ri(o)[r.station]),l=new X(...o.stations.u[r.station]),c=s.find(x=>x.at.distanceTo(a)<this.radius/60);if(c){c.findings.push(r),c.numbers.textContent=bs(c.findings),c.numbers.setAttribute("aria-label",`${c.numbers.textContent}: fly to these findings`);continue}let h=new oe(sn(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),u=new On().setFromPoints([a.clone().addScaledVector(l,-this.radius/22),a.clone().addScaledVector(l,this.radius/22)]),d=new eo(u,new Ns({color:h,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=$t("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: fly to ${r.title}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(l,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new X(...ri(n)[t.station]),o=new X(...n.stations.u[t.station]),a=new X(...js(s.beam).toward),l=new X().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,l),this.cutPlane.setFromNormalAndCoplanarPoint(l.clone().negate(),r),e){let c=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(l,this.radius*.34);this.fly(c,r,a)}this.ask()}buildMarker(t,e,n,s){for(let u of[...this.marker.children])zg(u);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(u,d)=>t.clone().addScaledVector(e,u*r).addScaledVector(n,d*r),a=new oe(sn("walker")),l=new Jo(new On().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Ns({color:a,depthTest:!1}));l.renderOrder=8;let c=new Rn(new sr(2*r,2*r),new us({color:a,transparent:!0,opacity:this.cut?0:.12,side:Yn,depthWrite:!1}));c.position.copy(t),c.up.copy(n),c.lookAt(t.clone().add(s)),c.renderOrder=7;let h=new Rn(new ta(r*.08,16,12),new us({color:a,depthTest:!1}));h.position.copy(t),h.renderOrder=9,this.marker.add(l,c,h),this.host.dataset.marker=[t.x,t.y,t.z].map(u=>u.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),l=ef()||this.soft?0:550,c=performance.now(),h=u=>{if(s!==this.flight)return;let d=l?Math.min(1,(u-c)/l):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),bd(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(h)};h(c)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=js(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new X(...e.toward),this.distance());this.go(n,new X(...e.up),t)}aslant(t=!0){let e=js(this.walk.joint.beam),n=new X(...e.toward).multiplyScalar(.75).addScaledVector(new X(...e.right),.45).addScaledVector(new X(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new X(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),bd(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Rn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Pi:Yn}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Rn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(zg),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function Ew(i,t,e){let n=new us({color:i,side:In});return n.onBeforeCompile=s=>{s.uniforms.strokes={value:t},s.fragmentShader=`uniform vec3 strokes;
${s.fragmentShader}`.replace("#include <opaque_fragment>",`#include <opaque_fragment>
if (mod(gl_FragCoord.x + ${e.toFixed(1)} * gl_FragCoord.y, 9.0) < 1.4) gl_FragColor.rgb = mix(gl_FragColor.rgb, strokes, 0.62);`)},n.customProgramCacheKey=()=>`hatched${e}`,n}function Tw(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function zg(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function Vg(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,l,c]=[r(3*o),r(3*o+1),r(3*o+2)],h=(Math.imul(a,73856093)^Math.imul(l,19349663)^Math.imul(c,83492791))&e-1;for(;;h=h+1&e-1){let u=n[h];if(u<0){n[h]=o,s[o]=o;break}if(r(3*u)===a&&r(3*u+1)===l&&r(3*u+2)===c){s[o]=u;break}}}return s}function Aw(i){let{positions:t,triangles:e,face:n}=i,s=Vg(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),l=[];for(let h=0;h<e.length;h++){let u=s[e[h]],d=(n[Math.floor(h/3)]+1)*r+u,f=o.get(d);f===void 0&&(f=l.length/3,o.set(d,f),l.push(t[3*u],t[3*u+1],t[3*u+2])),a[h]=f}let c=new On;return c.setAttribute("position",new Un(new Float32Array(l),3)),c.setIndex(new Un(a,1)),c.computeVertexNormals(),c}function Rw(i){let{positions:t,triangles:e,face:n}=i,s=Vg(t),r=t.length/3,o=new Map;for(let c=0;c<e.length;c++){let[h,u]=[s[e[c]],s[e[c%3===2?c-2:c+1]]],d=h<u?h*r+u:u*r+h,f=n[Math.floor(c/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[c,h]of o){if(h===-2)continue;let u=Math.floor(c/r),d=c%r;a.push(t[3*u],t[3*u+1],t[3*u+2],t[3*d],t[3*d+1],t[3*d+2])}let l=new On;return l.setAttribute("position",new Un(new Float32Array(a),3)),l}function Cw(i,t,e,n,s,r){let a=[],l=[],c=[],h=ww.map(g=>new oe(sn(g)));i.forEach((g,x)=>{let p=s[x]===3||s[x]===4?1.5:s[x]===5?1.3:s[x]===2?1.1:.85,m=h[s[x]];for(let y=0;y<8;y++){let A=y/8*2*Math.PI,M=g.clone().addScaledVector(t[x],Math.cos(A)*n*p).addScaledVector(e,Math.sin(A)*n*p);a.push(M.x,M.y,M.z),l.push(m.r,m.g,m.b)}});let u=r?i.length:i.length-1;for(let g=0;g<u;g++){let x=(g+1)%i.length;for(let p=0;p<8;p++){let m=(p+1)%8;c.push(g*8+p,x*8+p,x*8+m,g*8+p,x*8+m,g*8+m)}}let d=new On;d.setAttribute("position",new Un(new Float32Array(a),3)),d.setAttribute("color",new Un(new Float32Array(l),3)),d.setIndex(c);let f=new Rn(d,new us({vertexColors:!0,side:Yn}));return f.renderOrder=4,f}function Wg(i,t,e,n){let s=(x,p)=>t.summary[x]?.max??p,r=s("rib_width",1.5),o=Math.min(s("rib_height",1.2),4),a=s("cover_thickness_max",2),l=Math.max(r/2+2.2,r*1.9),c=Math.max(l,Math.min(r/2+e+s("clamp_land",2)+.7,r/2+6)),h=wd(t),u=a+Math.max(0,Math.min(s("gap",0),1))+.35,d=Math.max(...(n?.slopes??[0]).map(Math.abs));u+=Math.min(d,1)*l*.5;for(let x of n?.shade??[])x.v!==null&&x.v<a+5&&(u=Math.max(u,x.v+1.2));let f=Math.min(d,1)*l*.5,g={left:h>0?-l:-c,right:h<0?l:c};return i.rib_on==="cover"?{...g,bottom:-Math.max(1.6,o)-f,top:Math.max(u,o+1.2)}:{...g,bottom:-(o+1.4)-f,top:u}}var wd=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0;function Ed(i,t,e,n,s=7){let r=[...i].sort((a,l)=>a.wanted-l.wanted),o=Hg(r,t,e,s);for(let a=0,l=Gg(r,o,n);l>0&&a<r.length;a++){let c=!1;for(let h=0;h<r.length;h++)for(let u=h+1;u<r.length;u++){let d=[...r];[d[h],d[u]]=[d[u],d[h]];let f=Hg(d,t,e,s),g=Gg(d,f,n);g>=l||(r.splice(0,r.length,...d),[o,l,c]=[f,g,!0])}if(!c)break}r.forEach((a,l)=>a.put(o[l]))}function Gg(i,t,e){let n=i.flatMap((r,o)=>r.end?[[[e,t[o]+8],r.end]]:[]),s=0;return n.forEach((r,o)=>n.slice(o+1).forEach(a=>{Pw(r,a)&&s++})),s}function Pw([i,t],[e,n]){let s=(r,o,a)=>Math.sign((o[0]-r[0])*(a[1]-r[1])-(o[1]-r[1])*(a[0]-r[0]));return s(i,t,e)*s(i,t,n)<0&&s(e,n,i)*s(e,n,t)<0}function Hg(i,t,e,n){let s=[],r=t;for(let a of i){let l=Math.max(r,a.wanted-a.height/2);s.push(l),r=l+a.height+n}let o=e;for(let a=i.length-1;a>=0;a--)s[a]=Math.min(s[a],o-i[a].height),o=s[a]-n;return s}var Qc=null;function Td(i,t=12,e=500){return Qc??=document.createElement("canvas").getContext("2d"),Qc?(Qc.font=`${e} ${t}px "Barlow Semi Condensed", "Arial Narrow", sans-serif`,Qc.measureText(i).width):i.length*t*.47}function hr(i,t,e=3,n=12,s=500){let r=l=>Td(l,n,s)<=t,o=[];for(let l of i.split(/ +/)){let c=o[o.length-1];c!==void 0&&r(`${c} ${l}`)?o[o.length-1]=`${c} ${l}`:o.push(l)}let a=(l,c)=>{if(!c&&r(l))return l;let h=l;for(;h.length>1&&!r(`${h}…`);)h=h.slice(0,-1);return`${h}…`};return o.slice(0,e).map((l,c)=>a(l,c===e-1&&o.length>e))}var xi=i=>i.waived?"waived":i.severity;function Xg(i,t){let e=i.limit?` (${i.limit})`:"";return`${Sr[i.severity]} ${i.n}  ${i.title}${t&&t!=="–"?`: ${t}`:""}${e}`}function $g(i,t,e,n,s){let r=t+30+n*22<s.right?1:-1,o=t+r*(20+n*22),a=Math.max(s.top+10,Math.min(s.bottom-10,e-18));return mt("g",{class:`pin ${xi(i)}`,"data-finding":i.n},mt("path",{d:`M${Q(t)} ${Q(e)}L${Q(o)} ${Q(a)}`}),mt("circle",{class:"pin-dot",cx:Q(t),cy:Q(e),r:2.6}),mt("circle",{class:"pin-head",cx:Q(o),cy:Q(a),r:9}),mt("text",{x:Q(o),y:Q(a+4),"text-anchor":"middle"},String(i.n)))}function Ad(i,t,e,n){if(!i.at)return null;let{x:s,y:r,z:o,u:a}=e.stations,l=[i.at[0]-s[n],i.at[1]-r[n],i.at[2]-o[n]],c=(x,p)=>x[0]*p[0]+x[1]*p[1]+x[2]*p[2],h=a[n],u=t.beam,d=c(l,h),f=-c(l,u);return c(l,l)-d*d-f*f<=.6*.6?[d,f]:null}var qg=14,th=class{constructor(t,e,n,s,r,o,a,l,c){this.root=t;this.words=e;this.bands=n;this.here=s;this.key=r;this.contour=o;this.station=a;this.plot=l;this.width=c}root;words;bands;here;key;contour;station;plot;width;margins={left:[],right:[]};shown=new Set;value(t){return this.contour.stations[t]?.[this.station]??null}finding(t){let e=[t.column,...t.judged??[]];return this.here.find(n=>e.includes(n.column??"")||e.includes(n.quantity))??null}text(t){let e=t.column;return e&&t.station!==this.station&&this.contour.stations[e]?this.words.value(this.value(e),e):t.value}lines(t,e,n){let s=e!==null&&e.column!==null&&e.column!==t.column,r=e&&e.value!=="–"&&(s||e.column===t.column)?this.text(e):this.words.value(this.value(t.column),t.column),o=e?.limit||this.bands.find(c=>c.columns.includes(t.column)&&c.words)?.words||"",a=e?.target&&r!=="not measured"?` → ${e.target}`:"",l=hr(t.title,n).map(c=>["dim-title",c]);l.push(...hr(e?`${Sr[e.severity]}${e.n} ${r}${a}`:r,n,2,14,600).map(c=>["dim-value",c])),s&&this.words.unit(e.column)!==this.words.unit(t.column)&&l.push(["dim-limit",this.words.value(this.value(t.column),t.column)]);for(let c of o?hr(o,n):[])l.push(["dim-limit",c]);for(let c of t.also??[])l.push(...hr(c,n).map(h=>["dim-limit",h]));return l}group(t,e){return e&&this.shown.add(e),mt("g",{class:`dim-label ${e?xi(e):""}`,"data-column":t.column,"data-finding":e?.n})}arrows(t,e,n,s,r=""){let o=Math.hypot(n-t,s-e),a=`url(#${this.key}-arrow)`,l=`dim ${r}`;if(o>=22){this.root.append(mt("path",{class:l,d:`M${Q(t)} ${Q(e)}L${Q(n)} ${Q(s)}`,"marker-start":a,"marker-end":a}));return}let[c,h]=o>.01?[(n-t)/o,(s-e)/o]:[0,1];this.root.append(mt("path",{class:l,d:`M${Q(t-c*16)} ${Q(e-h*16)}L${Q(t)} ${Q(e)}`,"marker-end":a}),mt("path",{class:l,d:`M${Q(n+c*16)} ${Q(s+h*16)}L${Q(n)} ${Q(s)}`,"marker-end":a}))}change(t,[e,n],[s,r]){Math.hypot(s-e,r-n)<3||this.root.append(mt("path",{class:`change ${xi(t)}`,d:`M${Q(e)} ${Q(n)}L${Q(s)} ${Q(r)}`,"marker-end":`url(#${this.key}-to)`,"data-finding":t.n}))}sketch(t,[e,n]){this.root.append(mt("path",{class:t,d:`M${Q(e[0])} ${Q(e[1])}L${Q(n[0])} ${Q(n[1])}`}))}across(t,e,n,s,r,o=0){let[a,l]=[Math.min(t,e),Math.max(t,e)],c=this.finding(r),h=c?xi(c):"";[a,l].forEach((m,y)=>this.root.append(mt("path",{class:"extension",d:`M${Q(m)} ${Q(s[y])}V${Q(n-4)}`}))),this.arrows(a,n,l,n,h);let u=this.group(r,c),d=o===0?(a+l)/2:o>0?a+4:l-4,f=o===0?"middle":o>0?"start":"end",[g,x,...p]=this.lines(r,c,260);u.append(mt("text",{class:"dim-value",x:Q(d),y:Q(n-6),"text-anchor":f},mt("tspan",{class:"dim-title"},`${g[1]}  `),mt("tspan",{class:"dim-value"},x[1]))),p.reverse().forEach(([m,y],A)=>u.append(mt("text",{class:m,x:Q(d),y:Q(n-19-A*13),"text-anchor":f},y))),this.root.append(u)}along(t,e,n,s){let r=this.edge(t),o=this.finding(s);for(let[a,l]of[e,n])this.root.append(mt("path",{class:"extension",d:`M${Q(a)} ${Q(l)}H${Q(r+t*4)}`}));this.arrows(r,e[1],r,n[1],o?xi(o):""),this.slot(t,(e[1]+n[1])/2,s)}leader(t,e,n){let s=this.edge(t),r=s+t*4;this.slot(t,e[1],n,o=>this.root.append(mt("path",{class:"leader",d:`M${Q(r+t*4)} ${Q(o)}H${Q(r-t*6)}L${Q(e[0])} ${Q(e[1])}`}),mt("circle",{class:"leader-dot",cx:Q(e[0]),cy:Q(e[1]),r:2})),e)}edge(t){return t<0?this.plot.x-12:this.plot.x+this.plot.w+12}slot(t,e,n,s=()=>{},r){let o=this.edge(t)+t*10,a=t<0?"end":"start",l=this.finding(n),c=(t<0?o:this.width-o)-5,h=this.lines(n,l,c),u=this.group(n,l);this.root.append(u),this.margins[t<0?"left":"right"].push({wanted:e,height:h.length*qg,end:r,put:d=>{h.forEach(([f,g],x)=>u.append(mt("text",{class:f,x:Q(o),y:Q(d+11+x*qg),"text-anchor":a},g))),s(d+8)}})}settle(t,e){Ed(this.margins.left,t,e,this.edge(-1)+2),Ed(this.margins.right,t,e,this.edge(1)-2)}};function Yg(i,t,e,n,s,r,o,a){let l=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),c=i("light_lean"),h=i("light_enters_inner"),u=i("light_enters_outer"),d=h!==null&&u!==null,f=(i("light_width")??2*t)/2+n.margin,[g,x]=d?[h-n.margin,u+n.margin]:[-f,f],p=Math.max((s.at(0,l)[1]-s.ceiling)/s.scale,0),m=U=>Math.tan(U*Math.PI/180)*p,[y,A]=d?[g+m((c??0)-n.cone),x+m((c??0)+n.cone)]:[g,x],M=U=>{let P=(U+f)/(2*f),z=($,O)=>$+P*(O-$);return{above:z(y,A),enters:z(g,x),foot:U}},R=(U,P)=>{let[z,$]=s.at(U,P??l+p);return`${Q(z)} ${Q(P===null?s.ceiling:$)}`},w=(U,P)=>P>=l?U.enters+(U.above-U.enters)*(P-l)/Math.max(p,1e-9):U.foot+(U.enters-U.foot)*P/Math.max(l,1e-9),_=(U,P,z)=>{let $=z===null?[R(U.above,null),R(U.enters,l)]:z>l?[R(w(U,z),z),R(U.enters,l)]:[R(w(U,z),z)],O=z===null?[R(P.enters,l),R(P.above,null)]:z>l?[R(P.enters,l),R(w(P,z),z)]:[R(w(P,z),z)];return`M${[...$,R(U.foot,0),R(P.foot,0),...O].join("L")}Z`},b=[mt("path",{class:"light",d:_(M(-f),M(f),null)})],F=r.filter(U=>U.leans===(c!==null)||r.every(P=>P.leans===U.leans));for(let U of F){let P=U.v!==null&&U.v<l+p?U.v:null;b.push(mt("path",{class:U.share>0?"shade part":"shade",d:_(M(U.low),M(U.high),P),"data-low":U.low,"data-high":U.high,"data-share":U.share}))}let I=Math.max(F.length?4:1,Math.min(F.length?6:4,Math.round(2*f*s.scale/26)));for(let U=0;U<I;U++){let P=M(-f+n.margin+(U+.5)/I*2*(f-n.margin)),z=F.find(q=>P.foot>=q.low-1e-6&&P.foot<=q.high+1e-6),$=Math.min(6/s.scale,l>0?l:.1);if(!z){b.push(mt("path",{class:"ray","marker-end":`url(#${o}-arrow)`,d:`M${R(P.above,null)}L${R(P.enters,l)}L${R(w(P,$),$)}`}));continue}let O=z.v!==null&&z.v<l+p?z.v:l+p*.8,[st,W]=s.at(w(P,O),O);b.push(mt("path",{class:"ray lost",d:`M${R(w(P,O),O)}L${O>l?`${R(P.enters,l)}L`:""}${R(w(P,$),$)}`}),mt("path",{class:"ray",d:`M${R(P.above,null)}L${R(w(P,O),O)}`}),mt("path",{class:z.share>0?"stop part":"stop",d:`M${Q(st-5)} ${Q(W-5)}L${Q(st+5)} ${Q(W+5)}M${Q(st-5)} ${Q(W+5)}L${Q(st+5)} ${Q(W-5)}`}))}let C=[],V=F.find(U=>U.part);if(V){let U=V.v!==null&&V.v>=l+p,P=[V.v!==null?`${V.v.toFixed(1)} mm above`:"",Math.abs(V.along??0)>.5?`${Math.abs(V.along).toFixed(1)} mm ${V.along>0?"ahead":"back"}`:""].filter(Boolean).join(", "),z=M(-f),$=V.v!==null&&!U?V.v:l+p,[O,st]=s.at(Math.min(z.above,z.enters,z.foot),$),W=`${a(V.part)}${P?`, ${P}`:""}`;C.push(mt("text",{class:"caster","text-anchor":"end",x:Q(Math.max(O-8,s.left+Td(W,12,600)+2)),y:Q(Math.max(s.ceiling+12,st-4)),"data-part":V.part},W))}return{drawn:b,told:C}}function Kg(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,Iw(i.segments,s));return e}function Iw(i,t){let e=[],n=new Map,s=(u,d)=>{let[f,g]=[Math.round(u/.001),Math.round(d/.001)];for(let[x,p]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let m=n.get(`${x},${p}`);if(m!==void 0&&Math.hypot(e[m][0]-u,e[m][1]-d)<=.001)return m}return e.push([u,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(u,d,f)=>{r.has(u)||r.set(u,[]),r.get(u).push([d,f])};for(let u of t){let d=s(i[4*u],i[4*u+1]),f=s(i[4*u+2],i[4*u+3]);d!==f&&(o(d,u,f),o(f,u,d))}let a=new Set,l=u=>{let d=[u];for(let f=u;;){let g=r.get(f)?.find(([x])=>!a.has(x));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===u))return d}},c=[],h=[...r.keys()].sort((u,d)=>(r.get(u).length%2?0:1)-(r.get(d).length%2?0:1));for(let u of h)for(;r.get(u).some(([d])=>!a.has(d));)c.push(l(u).map(d=>e[d]));return Lw(c)}function Lw(i){let t=i.filter(n=>Ma(n)),e=i.filter(n=>!Ma(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!Ma(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(Rd(r,a[0]))n=[...n,...a];else if(Rd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var Rd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,Ma=i=>i.length>2&&Rd(i[0],i[i.length-1]);function Qg(i,t){return t===0?i:i?.map(e=>e.map(([n,s])=>[n,s-t*n]))}function Zg(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var Jg=.01;function t0(i,t,e,n,s,r){let o=[],a=0;for(let l=0;a<r&&l<2e3;l++){let c=n*(l+.5)*Jg,h=jg(Zg(t,c),e).map(([p])=>p),d=jg(Zg(i,c),e).filter(([p])=>p<.5).map(([,p])=>p);if(!h.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(p=>p<Math.min(...h)+.5)),g=Math.min(...h.filter(p=>p>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let x=g-s;if(x>f)o.push({u:c,low:f,high:x,drawn:g}),a+=(x-f)*Jg;else if(a>.02)break}return o}function jg(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var nh=3;function i0(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:l,frame:c}=i,h=n.stations.s[s],u=lt=>n.stations[lt]?.[s]??null,d=Kh(i.findings,t,n,s),f=t.rib_on==="none"||d.some(lt=>lt.rule==="rib-missing"&&!lt.waived),g=o<560?100:112,x=Math.min(d.length,nh)+(d.length>nh?1:0),p=74+(x?x*16:0),m={x:g,y:p,w:o-2*g,h:a-p-34},y=Math.min(m.w/(c.right-c.left),m.h/(c.top-c.bottom)),A=c.left-(m.w/y-(c.right-c.left))/2,M=c.top+(m.h/y-(c.top-c.bottom))*.15,R=lt=>m.x+(lt-A)*y,w=lt=>m.y+(M-lt)*y,_=i.sections?.slope(s)??0,b=(lt,pt)=>[R(lt),w(pt+_*lt)],F={at:b,scale:y,ceiling:m.y-24,left:m.x},I=t.rib_on==="cover"?-1:1,C=mt("svg",{class:"section-drawing",viewBox:`0 0 ${Q(o)} ${Q(a)}`,width:Q(o),height:Q(a),role:"img","aria-label":`Section across the seam at s = ${h.toFixed(2)} mm`,"data-slope":_});C.append(mt("defs",null,eh(`${l}-base`,"hatch-base",6,45),eh(`${l}-cover`,"hatch-cover",15,-45),eh(`${l}-other`,"hatch-other",5,90),eh(`${l}-trap`,"hatch-trap",4,90),mt("clipPath",{id:`${l}-window`},mt("rect",{x:m.x,y:m.y-24,width:m.w,height:m.h+24})),mt("marker",{id:`${l}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},mt("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"})),mt("marker",{id:`${l}-to`,viewBox:"0 0 10 10",refX:8,refY:5,markerWidth:4.5,markerHeight:4.5,orient:"auto"},mt("path",{d:"M0 0 L10 5 L0 10 Z",fill:"context-stroke"}))));let V=i.sections?.at(s)??null,U=V?Kg(V):new Map,P=mt("g",{"clip-path":`url(#${l}-window)`});C.append(P);let z=(u("rib_width_top")??u("rib_width"))===null?null:(u("rib_width_top")??u("rib_width"))/2,$=e.drop,O=i.sections?.shadeAt(s)??[],st=z===null?null:Yg(u,z,I,e,F,O,l,lt=>r.part(lt));st&&P.append(...st.drawn);let W=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}],q=I>0?0:1,et=I>0?0:-($??0);if(!f&&$!==null){let lt=pt=>Qg(U.get(pt),_);for(let pt of W){let xt=u(`trap_area_${pt.name}`);xt===null||!U.size||(pt.columns=t0(lt(q),lt(1-q),I,pt.side,$,xt),pt.columns.length>=2&&P.append(...Fw(pt.columns,I,et,b,l)))}}let ht=new Set(O.map(lt=>i.sections?.ownerOf(lt.part)).filter(lt=>lt!==void 0));for(let lt of[...U.keys()].sort((pt,xt)=>n0(pt)-n0(xt))){let pt=lt===0?"base":lt===1?"cover":"other",xt=U.get(lt).map(Ht=>Cd(Ht,R,w)).join("");P.append(mt("path",{class:`body ${pt}`,d:xt,"fill-rule":"evenodd"}),mt("path",{class:"hatching",d:xt,"fill-rule":"evenodd",fill:`url(#${l}-${pt})`}),mt("path",{class:`outline ${pt}${ht.has(lt)?" casts":""}`,d:xt,"data-part":pt==="other"?i.sections?.partOf(lt):null}))}let ut=!f&&z!==null&&e.collapse!==null&&U.get(q)!==void 0;if(ut){let lt=`${l}-melt`,pt=z*1.6,xt=-e.collapse*I;C.querySelector("defs").append(mt("clipPath",{id:lt},mt("path",{d:U.get(q).map(jt=>Cd(jt,R,w)).join(""),"clip-rule":"evenodd"})));let Ht=[b(-pt,0),b(pt,0),b(pt,xt),b(-pt,xt)];P.append(mt("path",{class:"melt","clip-path":`url(#${lt})`,d:`M${Ht.map(([jt,Vt])=>`${Q(jt)} ${Q(Vt)}`).join("L")}Z`}))}!f&&$!==null&&U.get(1)&&P.append(mt("path",{class:"moved",d:U.get(1).map(lt=>Cd(lt,R,pt=>w(pt-$))).join("")})),C.append(...st?.told??[]),U.size?i.sections?.isNeighbour(s)&&C.append(mt("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},"outline of the next station; values of this one")):C.append(mt("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?"No section was kept at this station.":"The document carries no section outlines."));let K=new th(C,r,e.bands,d,l,n,s,m,o),gt=Dw(i,K,{half:z,at:b,plot:m,sides:W,up:I,sunk:et,ribless:f,melts:ut,slope:_,X:R,Y:w});return K.settle(m.y-26,a-24),Uw(C,d,K,i,gt,m,R,w,x),C.append(...Ow(m.x+4,a-16,y)),C.append(mt("text",{class:"side",x:12,y:Q(a-8)},"◂ inner"),mt("text",{class:"side",x:Q(o-12),y:Q(a-8),"text-anchor":"end"},"outer ▸")),C}function Dw(i,t,e){let{contour:n,facts:s,compact:r}=i,{half:o,at:a,plot:l,sides:c,up:h,ribless:u}=e,d=_=>t.value(_),f=d("gap")??0,g=d("cover_thickness"),x=(g??0)+(h>0?f:0),p=l.y-8,m=l.y-36,y=o??.5,A=Math.min(d("rib_height")??.6,4),M={rib:a(0,-.35*A*h),flank_inner:a(-y,-.5*A*h),flank_outer:a(y,-.5*A*h),cover:a(y*.4,x*.6),gap:a(-y*.7,f/2*h),light:[a(0,x)[0],a(0,x)[1]-14],below:a(0,-(A+.7)*h),land:a(y+s.margin+.5,x),other:a(0,0)};o!==null&&!u&&(t.across(a(-o,0)[0],a(o,0)[0],m,[a(-o,0)[1],a(o,0)[1]],{column:"rib_width",title:"rib width",judged:["rib_width_top"]}),Vs(t,"rib_width",_=>[[a(-_/2,0),a(-_/2,-A*h)],[a(_/2,0),a(_/2,-A*h)]],_=>[-1,1].map(b=>[a(b*o,-A*h*.75),a(b*_/2,-A*h*.75)])));let R=d("clamp_land"),w=wd(n);if(o!==null&&R!==null&&w){let _=(d(w>0?"light_enters_outer":"light_enters_inner")??w*o)+w*s.margin,b=a(_,x),F=a(_+w*R,x);M.land=[(b[0]+F[0])/2,(b[1]+F[1])/2];let I=w>0?[b[1],F[1]]:[F[1],b[1]],C=d("clamp_tilt")!==null&&t.finding({column:"clamp_tilt",title:""})!==null;if(t.across(b[0],F[0],p,I,{column:"clamp_land",title:"land"},w),Vs(t,"clamp_land",V=>[[a(_+w*V,x-.7),a(_+w*V,x+.25)]],V=>[[a(_+w*R,x-.35),a(_+w*V,x-.35)]]),C){let V=[F[0],b[1]];t.sketch("reference",[b,V]),t.change(t.finding({column:"clamp_tilt",title:""}),F,V),t.leader(w,[(F[0]+V[0])/2,(F[1]+V[1])/2],{column:"clamp_tilt",title:"tilt of the land"})}}if(g!==null){let _=h>0?f:0,b=o??0;t.along(1,a(b,_+g),a(b,_),{column:"cover_thickness",title:"cover",judged:["cover_thickness_min","cover_thickness_max"]}),Vs(t,"cover_thickness",F=>[[a(-b*1.6,_+F),a(b*1.6,_+F)]],F=>[[a(b*.6,_+g),a(b*.6,_+F)]])}if(Vs(t,"gap",_=>[[a(-y*1.5,_*h),a(y*1.5,_*h)]],_=>[[a(y*.5,f*h),a(y*.5,_*h)]]),Nw(i,t,e),d("gap")!==null&&t.leader(-1,M.gap,{column:"gap",title:"gap",judged:["gap_min","gap_max"]}),e.melts&&d("melt_area")!==null&&!r&&t.leader(-1,a(-o*.5,-s.collapse*.5*h),{column:"melt_area",title:"melts"}),u)return M;for(let{side:_,name:b,columns:F}of c){let I=d(`rib_height_${b}`),C=o===null?0:_*o;if(I!==null&&I<6){t.along(_,a(C,0),a(C,-I*h),{column:`rib_height_${b}`,title:"rib height",judged:["rib_height"]}),Vs(t,"rib_height",W=>[[a(C,-W*h),a(C+_*1.2,-W*h)]],W=>[[a(C+_*.6,-I*h),a(C+_*.6,-W*h)]],[`rib_height_${b}`]);let O=d("rib_width_mid");O!==null&&Vs(t,"slenderness",W=>[[a(C,-W*O*h),a(C+_*1.2,-W*O*h)]],W=>[[a(C+_*.6,-I*h),a(C+_*.6,-W*O*h)]]);let st=d(`draft_${b}`);if(st!==null&&o!==null){let W=q=>a(C+_*I*Math.tan(q*Math.PI/180),-I*h);Vs(t,`draft_${b}`,q=>[[a(C,0),W(q)]],q=>[[W(st),W(q)]])}}let V=d(`trap_area_${b}`),U=F[Math.floor(F.length/2)],P=F[F.length-1],z=U?a(U.u,(U.low+U.high)/2*h+e.sunk):a(_*y*2,-.5*A*h);if(M[`trap_${b}`]=z,M[`exit_${b}`]=P?a(P.u,P.high*h+e.sunk):z,V!==null){let O=d(`trap_room_${b}`),st=d("melt_area"),W={column:`trap_area_${b}`,title:"trap, collapsed",judged:[`trap_room_${b}`,`trap_turn_${b}`,"trap_room"]},q=t.finding(W),et=s.bands.find(ht=>ht.rule==="trap-side")?.words??"";if(t.leader(_,z,{...W,also:[...O===null||q?[]:[`${O.toFixed(2)} × ½ melt${et?`, ${et}`:""}`],...st===null?[]:[`½ melt ${(st/2).toFixed(2)} mm²`]]}),q?.change&&P&&F.length>2){let ht=P.u+_*q.change,ut=F[Math.floor(F.length/2)].low*h+e.sunk,K=P.high*h+e.sunk;t.sketch(`ghost ${xi(q)}`,[a(ht,ut),a(ht,K)]),t.change(q,a(P.u,(ut+K)/2),a(ht,(ut+K)/2))}}let $=d(`lip_gap_${b}`);if($!==null&&(!r||t.finding({column:`lip_gap_${b}`,title:""}))){let O={column:`lip_gap_${b}`,title:"lip gap"};if(!P)t.leader(_,M[`exit_${b}`],O);else{let st=t.finding(O),W=P.u+_*.12,q=P.high*h+e.sunk,et=q-$*h;t.arrows(...a(W,q),...a(W,et),st?xi(st):""),t.leader(_,a(W,(q+et)/2),O),Vs(t,`lip_gap_${b}`,ht=>[[a(P.u,q-ht*h),a(P.u+_*.9,q-ht*h)]],ht=>[[a(W+_*.35,et),a(W+_*.35,q-ht*h)]])}}}return M}function Vs(i,t,e,n,s=[]){let r=i.finding({column:t,title:"",judged:[`${t}_top`,`${t}_min`,`${t}_max`,...s]});if(!(!r||r.limit_at===null||!r.target)){for(let o of e(r.limit_at))i.sketch(`ghost ${xi(r)}`,o);for(let[o,a]of n(r.limit_at))i.change(r,o,a)}}function Nw(i,t,{at:e,X:n,Y:s,plot:r,up:o}){let a={column:"free_travel",title:"free travel",judged:["free_travel"]},l=t.finding(a),c=t.value("free_travel");if(!l||l.limit_at===null)return;let h=l.station===i.station||c===null?Number.parseFloat(l.value):c,u=Ad(l,i.joint,i.contour,i.station),[d,f]=u??[0,o>0?t.value("gap")??0:0],g=u?[n(d),s(f)]:e(d,f);if(!Number.isFinite(h)||g[0]<r.x||g[0]>r.x+r.w)return;let x=Math.abs(s(1)-s(0)),p=m=>[g[0],g[1]+m*x];t.sketch(`ghost ${xi(l)}`,[[g[0]-26,p(l.limit_at)[1]],[g[0]+26,p(l.limit_at)[1]]]),t.change(l,p(h),p(l.limit_at)),t.along(g[0]>r.x+r.w/2?1:-1,g,p(h),a)}function e0(i,t){let e=i.column||i.quantity,n=e.endsWith("_inner")?"inner":e.endsWith("_outer")?"outer":"",s=e.startsWith("draft")?`flank_${n}`:e.startsWith("trap_open")||e.startsWith("lip")?`exit_${n}`:e.startsWith("trap")?`trap_${n||"outer"}`:e.startsWith("clamp")?"land":/^(beam|light|spot|path_in_cover)/.test(e)?"light":/^(cover|transmission|mean_path)/.test(e)?"cover":/^(gap|free_travel|stop|local_collapse|collapse)/.test(e)?"gap":/^(support|overhang|wall|nest)/.test(e)?"below":/^(rib|slenderness|melt)/.test(e)?"rib":"other";return t[s]??t.other}function Uw(i,t,e,n,s,r,o,a,l){let c={left:r.x,right:r.x+r.w,top:r.y-24,bottom:r.y+r.h},h=([f,g])=>f>=c.left&&f<=c.right&&g>=c.top&&g<=c.bottom,u=new Map;for(let f of t){if(e.shown.has(f))continue;let g=f.column?null:Ad(f,n.joint,n.contour,n.station),x=g?[o(g[0]),a(g[1])]:e0(f,s),[p,m]=h(x)?x:e0(f,s),y=`${Math.round(p/8)},${Math.round(m/8)}`,A=u.get(y)??0;u.set(y,A+1),i.append($g(f,p,m,A,c))}let d=t.slice(nh).length;t.slice(0,nh).forEach((f,g)=>{let x=Xg(f,e.text(f)),[p]=hr(x,n.width-28,1,13,600),m=mt("text",{class:`mark-line ${xi(f)}`,x:12,y:Q(15+g*16),"data-mark":f.n},p);p!==x&&m.append(mt("title",null,x)),i.append(m)}),d&&i.append(mt("text",{class:"mark-line",x:12,y:Q(15+(l-1)*16)},`and ${d} more here`))}function Fw(i,t,e,n,s){let r=Pd(i,a=>a.low*t+e,a=>a.high*t+e,n),o=t>0?Pd(i,a=>a.high,a=>a.drawn,n):Pd(i,a=>e-a.low,a=>-a.low,n);return[mt("path",{class:"trap-lost",d:o}),mt("path",{class:"trap",d:r}),mt("path",{fill:`url(#${s}-trap)`,d:r})]}var n0=i=>i===0?1:i===1?2:0;function Cd(i,t,e){return"M"+i.map(([n,s])=>`${Q(t(n))} ${Q(e(s))}`).join("L")+(Ma(i)?"Z":"")}function Pd(i,t,e,n){let s=(a,l)=>n(a,l).map(Q).join(" "),r=i.map(a=>s(a.u,t(a))),o=[...i].reverse().map(a=>s(a.u,e(a)));return`M${[...r,...o].join("L")}Z`}function eh(i,t,e,n){return mt("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},mt("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function Ow(i,t,e){let n=e*4>140?1:e*4>40?2:5,s=[];for(let r=0;r<4;r++)s.push(mt("rect",{class:r%2?"scale-light":"scale-dark",x:Q(i+r*n*e/4),y:t,width:Q(n*e/4),height:4}));return s.push(mt("text",{class:"side",x:Q(i+n*e+6),y:t+5},`${n} mm`)),s}var Bw=0,Id=new WeakMap,ba=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${Bw++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=Ld(this.atlas,t,e,n,this.key,this.compact);tn(this.host),this.host.append(s)}};function Ld(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],l=i.sectionsOf(o.id,a.id);return Id.has(a)||Id.set(a,Wg(o,a,i.payload.facts[t.joint].margin,l)),i0({joint:o,facts:i.payload.facts[t.joint],contour:a,station:t.station,sections:l,findings:i.payload.findings,words:i.words,frame:Id.get(a),width:e,height:n,compact:r,key:s})}function Dd(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,l=t.station;return $t("span",null,$t("b",{"data-s":s[l]},`s = ${s[l].toFixed(2)} mm`),` · station ${l+1} of ${s.length}`,e.contours.length>1?` of path ${n.id}`:"",` · x ${r[l].toFixed(2)}  y ${o[l].toFixed(2)}  z ${a[l].toFixed(2)} mm`)}var zw=["not measured","within","close to the limit","limit broken","broken, waived","to be looked at","noted"],s0=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],Sa=1e3,rh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=$t("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,tn(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=p=>p/e*Sa,o=$t("div",{class:"strip-board"});this.board=o;let a=mt("svg",{class:"ruler",viewBox:`0 0 ${Sa} 30`,preserveAspectRatio:"none","aria-hidden":!0}),l=$t("div",{class:"ruler-numbers","aria-hidden":!0}),c=this.host.clientWidth||1e3,h=c>820?c*.62:c-200,u=Vw(e/Math.max(2,Math.min(8,h/50)));for(let{start:p,length:m,contour:y}of t){a.append(mt("line",{class:"ruler-line",x1:r(p),x2:r(p+m),y1:29,y2:29}));for(let A=0;A<=m+1e-6;A+=u/5){let M=Math.abs(A/u-Math.round(A/u))<1e-6;a.append(mt("line",{class:"ruler-line",x1:Q(r(p+A)),x2:Q(r(p+A)),y1:M?20:25,y2:29})),M&&m-A>Math.max(u*.45,e*.075)&&l.append(ih($t("span",null,`${Math.round(A)}`),r(p+A)))}e>0&&m>u&&l.append(ih($t("span",{class:"end"},m.toFixed(1)),r(p+m))),t.length>1&&l.append(ih($t("b",null,n.contours[y].id),r(p+m/2))),this.turns(a,y,p,r)}o.append($t("div",{class:"strip-head"},"unrolled seam, mm"),$t("div",{class:"track ruler-track"},a,l,this.marks(r)),$t("div",{class:"strip-head end"},"here · limit"));let d=p=>s.bands[p].severity==="must-fix"||this.atlas.payload.findings.some(m=>m.rule===s.bands[p].rule&&m.joint===n.id&&m.severity!=="note"),f=p=>{let m=this.atlas.payload.findings.filter(y=>y.rule===s.bands[p].rule&&y.joint===n.id&&y.severity!=="note");return m.some(y=>y.severity==="must-fix"&&!y.waived)?0:m.length?1:d(p)?2:3},g=s.bands.map((p,m)=>m).sort((p,m)=>f(p)-f(m));for(let p of g){let m=s.bands[p],y=d(p)?"":" more",A=mt("svg",{viewBox:`0 0 ${Sa} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(p)});for(let{contour:R,start:w}of t){let _=n.contours[R],b=s.tracks[_.id]?.[p]??[];for(let[F,I,C]of b){let V=r(w+sh(_.stations.s,F,0,_.length_mm)),U=r(w+sh(_.stations.s,I,1,_.length_mm)),P=C>2?Math.max(7,U-V):U-V;A.append(mt("rect",{class:`cell ${Po[C]}`,x:Q((V+U-P)/2),y:s0[C][0],width:Q(P),height:s0[C][1]}))}}let M=$t("div",{class:`strip-value${y}`,"data-rule":m.rule});this.values[p]=M,o.append($t("div",{class:`strip-label${y}`,title:m.title},m.title),$t("div",{class:`track${y}`},A),M)}let x=g.filter(p=>!d(p)).length;if(this.host.append(this.cursor,o),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(x?38:18)}px`),x){let p=$t("button",{type:"button",class:"strip-more screen","aria-expanded":!1},`${x} further rules`);p.addEventListener("click",()=>{let m=o.classList.toggle("open");p.setAttribute("aria-expanded",String(m)),p.textContent=m?"fewer rules":`${x} further rules`,this.moveCursor()}),this.host.append(p)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.turn_radius;if(a)for(let l=0;l<a.length;l++){if(a[l]===null||a[l]>60)continue;let c=l;for(;c+1<a.length&&a[c+1]!==null&&a[c+1]<=60;)c++;let[h,u]=[sh(r.s,l,0,o),sh(r.s,c,1,o)];t.append(mt("rect",{class:"turn",x:Q(s(n+h)),width:Q(s(u)-s(h)),y:20,height:9})),l=c}}marks(t){let e=this.atlas.payload.findings,n=$t("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let h of e){if(h.joint!==this.walk.joint.id||h.station===null||Ka(h))continue;let u=this.walk.joint.contours.findIndex(f=>f.id===h.contour),d=t(s[u].start+this.walk.joint.contours[u].stations.s[h.station]);r.push({x:d,findings:[h]})}let o=this.host.clientWidth||1e3,a=o>820?o*.62:o-200,l=r.length>8?Pa:bs,c=h=>Math.max(24,l(h.findings).length*7.5+6)/2;r.sort((h,u)=>h.x-u.x);for(let h=0;h+1<r.length;){let[u,d]=[r[h],r[h+1]];if((d.x-u.x)*a/Sa>=c(u)+c(d)+3){h++;continue}let f=[...u.findings,...d.findings].sort((g,x)=>g.n-x.n);r.splice(h,2,{x:(u.x*u.findings.length+d.x*d.findings.length)/f.length,findings:f}),h=Math.max(0,h-1)}for(let{x:h,findings:u}of r){let d=u[0],f=$t("button",{type:"button",class:`strip-mark ${d.waived?"waived":d.severity}`,"data-finding":d.n,"aria-label":`Go to finding ${u.map(g=>g.n).join(", ")}: ${d.title}`},l(u));f.addEventListener("click",()=>this.walk.showFinding(d)),n.append(ih(f,h))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,l,c]of n.tracks[o.id]?.[t]??[])c!==1&&s.push(`${zw[c]} from ${o.stations.s[a].toFixed(1)} to ${o.stations.s[l].toFixed(1)} mm`);let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):"within everywhere"}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words,a=this.walk.findingsHere();n.bands.forEach((l,c)=>{let h=a.find(x=>x.rule===l.rule),u=this.values[c];tn(u);for(let x of["must-fix","attention","note","waived"])u.classList.remove(x);h&&u.classList.add(h.waived?"waived":h.severity);let d=$t("span",{class:"values"},h?`${Sr[h.severity]} `:""),f=l.columns.filter(x=>Array.isArray(e.stations[x])).map(x=>{let p=e.stations[x][t.station]??null,m=p===null?o.reason(r.id,e.id,x,s):"",y=p===null?"–":l.columns.length>1&&o.unit(x)?o.bare(p,x):o.value(p,x);return $t("b",{"data-column":x,"data-value":String(p),title:m||o.title(x)},y)});!f.length&&h&&f.push($t("b",{"data-finding":h.n},h.value)),f.forEach((x,p)=>d.append(p?" / ":"",x)),u.dataset.state=h?h.waived?"waived":h.severity:"";let g=h?.limit||l.words||"";u.append(d,$t("span",{class:"limit",title:g},g))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${Q(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${Q(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function ih(i,t){return i.style.left=`${t/Sa*100}%`,i}function sh(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function Vw(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var oh=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(n,s)=>_e(n)?.addEventListener("click",s);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1)),e("finding-back",()=>{let n=this.walk.neighbourFinding(-1);n&&this.walk.showFinding(n)}),e("finding-on",()=>{let n=this.walk.neighbourFinding(1);n&&this.walk.showFinding(n)}),this.slider.addEventListener("keydown",n=>{ah(n,this.walk)&&n.preventDefault()})}walk;slider=_e("walk-slider");where=_e("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),r=`s = ${this.walk.s.toFixed(2)} mm`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, finding ${n.map(c=>`${c.n} ${c.title}`).join(", ")}`:"")),tn(this.where);let o=this.walk.contour;this.where.append($t("b",{"data-station":t.station},r),$t("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=_e("walk-live"),l=n.map(c=>`Finding ${c.n}: ${c.title}`).join(". ");a&&a.textContent!==l&&(a.textContent=l)}};function ah(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n,"keys"),!0}}return!1}async function Gw(){let i=_e("seamcheck-data");if(l0(()=>{}),!i)return;let t=await rf(i);if(document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(x=>x.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new Ia(t),n=new ja(t),s=new ba(_e("section-figure"),e),r=new ba(_e("section-beside"),e,!0),o=new tl(_e("plan-figure"),e,n),a=new rh(_e("strip"),e,n),l=new oh(n),c=new Ya(_e("charts-judged"),_e("charts-within"),_e("charts-further"),e,n),h=new Nd(e,n),u=!1;bo(_e("section-beside"),()=>{u=!0,r.show(n.place)}),n.listen((x,p)=>{s.show(x),u&&r.show(x),o.show(x),a.show(x),l.show(x),c.show(x),h.show(x,p==="finding"||p==="keys-finding");for(let m of["section-caption","beside-caption"]){let y=_e(m);tn(y),y.append(Dd(e,x))}Xw(e,n),$w(n)});for(let x of["section-figure","plan-figure","strip","section-beside"])_e(x).addEventListener("keydown",p=>{ah(p,n)&&p.preventDefault()});for(let x of document.querySelectorAll("[data-go]"))x.addEventListener("click",p=>{let m=t.findings.find(y=>String(y.n)===x.dataset.go);m&&m.station!==null&&(p.preventDefault(),n.showFinding(m),x.dataset.top!==void 0&&_e("desk").scrollIntoView({block:"start"}))});for(let x of document.querySelectorAll("[data-place]"))x.addEventListener("click",p=>{let[m,y,A]=x.dataset.place.split(" "),M=t.joints.findIndex(w=>w.id===m),R=t.joints[M]?.contours.findIndex(w=>w.id===y)??-1;R<0||(p.preventDefault(),n.go({joint:M,contour:R,station:Number(A)},"finding"))});let d=_e("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(x=>{d&&(d.value=String(x.joint))}),Ww(),Hw(),_e("show-spread")?.addEventListener("change",x=>{_e("charts").classList.toggle("with-spread",x.target.checked)}),nf(t);let f=qw(e);if(l0(()=>{o.draw(),c.retheme(),h.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let x of document.querySelectorAll("details.fold:not([open])"))x.open=!0,x.dataset.wasShut="";for(let x of f)x.forPrint();c.forPrint(256)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let x of document.querySelectorAll("[data-was-shut]"))x.open=!1,delete x.dataset.wasShut;for(let x of f)x.forScreen();c.forScreen()}),await document.fonts.ready,addEventListener("hashchange",()=>r0(n)),r0(n)){document.documentElement.dataset.ready="yes";return}let g=t.findings.find(x=>x.station!==null);g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}function r0(i){let t=decodeURIComponent(location.hash.slice(1)),e=/^f(\d+)$/.exec(t);if(e){let o=i.payload.findings.find(a=>a.n===Number(e[1])&&a.station!==null);return o&&i.showFinding(o),o!==void 0}let n=/^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(t);if(!n)return!1;let s=n[1]?i.payload.joints.findIndex(o=>o.id===n[1]):0,r=n[2]?i.payload.joints[s]?.contours.findIndex(o=>o.id===n[2])??-1:0;return s<0||r<0?!1:(i.go({joint:s,contour:r,station:tu(i.payload.joints[s].contours[r].stations.s,Number(n[3]))},"finding"),!0)}function Hw(){let i=()=>{let t=document.querySelector(`${/^#finding-\d+$/.test(location.hash)?location.hash:"#none"} .sheet-fold`);t&&(t.open=!0)};addEventListener("hashchange",i),i()}function Ww(){let i=_e("list-filter"),t=_e("list-order"),e=document.querySelector("#finding-list tbody");if(!i||!t||!e)return;let n=[...e.querySelectorAll("[data-row]")],s=()=>{let r=i.value,o=u=>!r||u.dataset.severity===r||`rule:${u.dataset.rule}`===r;for(let u of n)u.hidden=!o(u);let a=n.filter(o).length;_e("list-count").textContent=a===n.length?`(${n.length})`:`(${a} of ${n.length})`;for(let u of e.querySelectorAll(".group-head"))u.remove();let l=u=>t.value==="rule"?[u.dataset.rule??"",0]:["",t.value==="s"?Number(u.dataset.s||1e9):0],c=[...n].sort((u,d)=>l(u)[0].localeCompare(l(d)[0])||l(u)[1]-l(d)[1]||Number(u.dataset.row)-Number(d.dataset.row));if(e.append(...c),t.value!=="rule")return;let h=c.filter(o);for(let u of h){let d=h.filter(f=>f.dataset.rule===u.dataset.rule);d[0]===u&&u.before($t("tr",{class:"group-head"},$t("th",{colspan:3,scope:"rowgroup"},`${u.dataset.title} (${d.length})`)))}};i.addEventListener("change",s),t.addEventListener("change",s)}var Nd=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;_e("pane-plan").hidden=r!=="plan",_e("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=_e("space-figure");this.atlas.meshes.length||t.append($t("p",{class:"empty"},"The document carries no meshes of the parts; the seam is shown alone."));try{this.scene=new Kc(t,this.atlas,this.walk)}catch{tn(t),t.append($t("p",{class:"empty"},"This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places."));return}this.tools(this.scene),this.scene.aslant(!1),this.scene.flyToMarker(),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&ah(e,this.walk)&&e.preventDefault()})}tools(t){let e=_e("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(_e("space-note").textContent=`${n} small faces are left out of this picture; all were measured.`);let s=(o,a)=>{let l=$t("button",{type:"button"},o);return l.addEventListener("click",a),l},r=(o,a,l)=>{let c=$t("input",{type:"checkbox"});return c.checked=a,c.addEventListener("change",()=>l(c.checked)),$t("label",null,c,` ${o}`)};Mo(e,[this.larger(),s("Along the light",()=>t.alongLight()),s("Aslant",()=>t.aslant()),s("To the section",()=>t.flyToMarker()),r("cut open here",!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&Mo(e,[r(`${t.partIds.length-12} further parts`,!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}larger(){let t=_e("desk"),e=$t("button",{type:"button",id:"space-larger","aria-pressed":"false"},"Larger"),n=s=>{t.classList.toggle("large-space",s),e.setAttribute("aria-pressed",String(s)),e.textContent=s?"Smaller":"Larger"};return e.addEventListener("click",()=>n(!t.classList.contains("large-space"))),_e("tab-plan")?.addEventListener("click",()=>n(!1)),e}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function Xw(i,t){let e=_e("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(l=>Array.isArray(n.stations[l])).map(l=>{let c=n.stations[l][r.station],h=c===null?i.words.reason(s.id,n.id,l,o):"";return $t("tr",null,$t("th",{scope:"row"},i.words.title(l)),$t("td",{"data-column":l,"data-value":String(c)},i.words.value(c,l)),$t("td",null,h))});tn(e),e.append(...a)}function $w(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function qw(i){return[...document.querySelectorAll("[data-sheet]")].flatMap((t,e)=>{let n=i.payload.findings.find(h=>String(h.n)===t.dataset.sheet);if(n.station===null)return[];let s=i.payload.joints.findIndex(h=>h.id===n.joint),r=i.payload.joints[s].contours.findIndex(h=>h.id===n.contour),o={joint:s,contour:r,station:n.station},a=(h,u)=>{tn(t),t.append(Ld(i,o,h,u,`sheet${e}`,!0),$t("figcaption",null,Dd(i,o)))},l=()=>a(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),c=bo(t,l);return[{draw:c,forPrint:()=>{c(),a(450,330)},forScreen:l}]})}var o0=!1,a0=[];function l0(i){if(a0.push(i),o0)return;o0=!0;let t=document.documentElement,e=()=>{for(let n of a0)n()};_e("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}Gw().catch(i=>{console.error(i);let t=_e("trouble");t&&(t.hidden=!1,t.textContent=`The figures could not be drawn: ${i instanceof Error?i.message:String(i)}. All texts and tables below are complete.`)});})();
